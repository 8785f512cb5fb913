// Code generated from house.json by make golden. DO NOT EDIT.

package shop

import (
	"finwright/core/tube"
	"finwright/core/units"
)

const houseFingerprint = "75d1332ecedaff54"

func houseValues() Capability {
	return Capability{
		Name: "Quillhaven Finning (invented)", Currency: "EUR", Lines: []Line{
			{
				Name: "Line 1, tension-wound", TubeOD: Range[units.Length]{Low: 0.016, High: 0.0508},
				Sizes:      []units.Length{0.016, 0.01905, 0.025, 0.0254, 0.03175, 0.0381, 0.0508},
				TubeLength: Range[units.Length]{Low: 1, High: 15},
				StripWidth: Range[units.Length]{Low: 0.006, High: 0.026000000000000002},
				StripSpeed: 2.5, Drive: 11000, Idle: 1500, RunUp: 2, RunDown: 0.5, Jog: 0.1, Groover: Groover{Lifts: true, RunOut: 0.006},
				Straight: Straightness{Bow: 0.0025, Over: 2},
				ODOut:    0.0002, Securing: []Securing{
					{Way: "staple", Time: 12},
					{Way: "band", Time: 18},
					{Way: "adhesive", Time: 25},
				},
				Coils: []Coil{
					{Form: "pancake", OD: 0.86, ID: 0.28, Width: 0, Mass: 110, Fill: 0.98, Change: 300},
					{Form: "traverse", OD: 0.86, ID: 0.28, Width: 0.35000000000000003, Mass: 420, Fill: 0.93, Change: 900},
				},
				Racks:      Racks{Tubes: 40, Change: 480},
				Times:      Times{Load: 30, Secure: 12, Check: 900},
				ChangeOver: ChangeOver{Type: 10800, OD: 4800, Tooling: 3600, Pitch: 1500},
				FirstOff:   1, Tooling: Tooling{Rolls: 2600, RollsDays: 45, Size: 850, SizeDays: 20},
				Types: []Practice{
					{
						Type: "footed", Height: Range[units.Length]{Low: 0.00635, High: 0.019},
						HeightByOD: []ByOD[units.Length]{
							{OD: 0.016, Low: 0.00635, High: 0.01},
							{OD: 0.01905, Low: 0.00635, High: 0.0127},
							{OD: 0.025, Low: 0.00635, High: 0.015875},
							{OD: 0.0254, Low: 0.00635, High: 0.015875},
							{OD: 0.03175, Low: 0.00635, High: 0.015875},
							{OD: 0.0381, Low: 0.00635, High: 0.019},
						},
						Count: Range[units.PerLength]{Low: 157.48031496062993, High: 472.4409448818898},
						CountByOD: []ByOD[units.PerLength]{
							{OD: 0.016, Low: 236.2204724409449, High: 472.4409448818898},
							{OD: 0.0381, Low: 157.48031496062993, High: 433.07086614173227},
						},
						Strip:      Range[units.Length]{Low: 0.0003, High: 0.0005},
						FinMetals:  []string{"al1060", "al1050a", "al1100", "al3003", "c11000", "c12200"},
						TubeMetals: []string{"cs", "t11", "t22", "t5", "t9", "tp304", "tp316", "2205", "c70600", "c71500", "c44300", "c12200", "ti2", "825"},
						LeastWall:  0.0009000000000000001, Knurl: 0, Spindle: 20, Oiler: true, Growth: 0, Scatter: 0, StripRatio: 1.01, Joints: Joints{Short: 1, Long: 2, Until: 6, Apart: 3, Clear: 0.22},
						Tools: []Tool{
							{Height: 0.009524999999999999, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.0127, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.014, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004064, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
						},
						Hardest: 260, BeadOut: 0.0001, BeadIn: 0.0005, Burr: 3e-05, Demands: []StripDemand{"soft", "certificate"},
						Weld: Weld{Power: 0, Heat: 0, Restart: 0, Edge: []EdgeSpeed(nil), Preheat: []Preheat(nil)},
					},
					{
						Type: "overlap_footed", Height: Range[units.Length]{Low: 0.00635, High: 0.019},
						HeightByOD: []ByOD[units.Length]{
							{OD: 0.016, Low: 0.00635, High: 0.01},
							{OD: 0.01905, Low: 0.00635, High: 0.0127},
							{OD: 0.025, Low: 0.00635, High: 0.015875},
							{OD: 0.0254, Low: 0.00635, High: 0.015875},
							{OD: 0.03175, Low: 0.00635, High: 0.015875},
							{OD: 0.0381, Low: 0.00635, High: 0.019},
						},
						Count: Range[units.PerLength]{Low: 157.48031496062993, High: 472.4409448818898},
						CountByOD: []ByOD[units.PerLength]{
							{OD: 0.016, Low: 236.2204724409449, High: 472.4409448818898},
							{OD: 0.0381, Low: 157.48031496062993, High: 433.07086614173227},
						},
						Strip:      Range[units.Length]{Low: 0.0003, High: 0.0005},
						FinMetals:  []string{"al1060", "al1050a", "al1100", "al3003", "c11000", "c12200"},
						TubeMetals: []string{"cs", "t11", "t22", "t5", "t9", "tp304", "tp316", "2205", "c70600", "c71500", "c44300", "c12200", "ti2", "825"},
						LeastWall:  0.0009000000000000001, Knurl: 0, Spindle: 20, Oiler: true, Growth: 0, Scatter: 0, StripRatio: 1.01, Joints: Joints{Short: 1, Long: 2, Until: 6, Apart: 3, Clear: 0.22},
						Tools: []Tool{
							{Height: 0.009524999999999999, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.0127, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.014, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004064, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
						},
						Hardest: 260, BeadOut: 0.0001, BeadIn: 0.0005, Burr: 3e-05, Demands: []StripDemand{"soft", "certificate"},
						Weld: Weld{Power: 0, Heat: 0, Restart: 0, Edge: []EdgeSpeed(nil), Preheat: []Preheat(nil)},
					},
					{
						Type: "knurled_footed", Height: Range[units.Length]{Low: 0.00635, High: 0.019},
						HeightByOD: []ByOD[units.Length]{
							{OD: 0.016, Low: 0.00635, High: 0.01},
							{OD: 0.01905, Low: 0.00635, High: 0.0127},
							{OD: 0.025, Low: 0.00635, High: 0.015875},
							{OD: 0.0254, Low: 0.00635, High: 0.015875},
							{OD: 0.03175, Low: 0.00635, High: 0.015875},
							{OD: 0.0381, Low: 0.00635, High: 0.019},
						},
						Count: Range[units.PerLength]{Low: 157.48031496062993, High: 472.4409448818898},
						CountByOD: []ByOD[units.PerLength]{
							{OD: 0.016, Low: 236.2204724409449, High: 472.4409448818898},
							{OD: 0.0381, Low: 157.48031496062993, High: 433.07086614173227},
						},
						Strip:      Range[units.Length]{Low: 0.0003, High: 0.0005},
						FinMetals:  []string{"al1060", "al1050a", "al1100", "al3003", "c11000", "c12200"},
						TubeMetals: []string{"cs", "t11", "t22", "t5", "t9", "tp304", "tp316", "2205", "c70600", "c71500", "c44300", "c12200", "ti2", "825"},
						LeastWall:  0.00165, Knurl: 0.00015, Spindle: 13.333333333333334, Oiler: true, Growth: 0.0002, Scatter: 0.0002, StripRatio: 1.01, Joints: Joints{Short: 1, Long: 2, Until: 6, Apart: 3, Clear: 0.22},
						Tools: []Tool{
							{Height: 0.009524999999999999, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.0127, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.014, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004064, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
						},
						Hardest: 180, BeadOut: 5e-05, BeadIn: 0.0003, Burr: 3e-05, Demands: []StripDemand{"soft", "certificate"},
						Weld: Weld{Power: 0, Heat: 0, Restart: 0, Edge: []EdgeSpeed(nil), Preheat: []Preheat(nil)},
					},
					{
						Type: "knurled_overlap", Height: Range[units.Length]{Low: 0.00635, High: 0.019},
						HeightByOD: []ByOD[units.Length]{
							{OD: 0.016, Low: 0.00635, High: 0.01},
							{OD: 0.01905, Low: 0.00635, High: 0.0127},
							{OD: 0.025, Low: 0.00635, High: 0.015875},
							{OD: 0.0254, Low: 0.00635, High: 0.015875},
							{OD: 0.03175, Low: 0.00635, High: 0.015875},
							{OD: 0.0381, Low: 0.00635, High: 0.019},
						},
						Count: Range[units.PerLength]{Low: 157.48031496062993, High: 472.4409448818898},
						CountByOD: []ByOD[units.PerLength]{
							{OD: 0.016, Low: 236.2204724409449, High: 472.4409448818898},
							{OD: 0.0381, Low: 157.48031496062993, High: 433.07086614173227},
						},
						Strip:      Range[units.Length]{Low: 0.0003, High: 0.0005},
						FinMetals:  []string{"al1060", "al1050a", "al1100", "al3003", "c11000", "c12200"},
						TubeMetals: []string{"cs", "t11", "t22", "t5", "t9", "tp304", "tp316", "2205", "c70600", "c71500", "c44300", "c12200", "ti2", "825"},
						LeastWall:  0.00165, Knurl: 0.00015, Spindle: 13.333333333333334, Oiler: true, Growth: 0.0002, Scatter: 0.0002, StripRatio: 1.01, Joints: Joints{Short: 1, Long: 2, Until: 6, Apart: 3, Clear: 0.22},
						Tools: []Tool{
							{Height: 0.009524999999999999, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.0127, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.014, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004064, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
						},
						Hardest: 180, BeadOut: 5e-05, BeadIn: 0.0003, Burr: 3e-05, Demands: []StripDemand{"soft", "certificate"},
						Weld: Weld{Power: 0, Heat: 0, Restart: 0, Edge: []EdgeSpeed(nil), Preheat: []Preheat(nil)},
					},
					{
						Type: "edge_wound", Height: Range[units.Length]{Low: 0.004, High: 0.0127},
						HeightByOD: []ByOD[units.Length]{},
						Count:      Range[units.PerLength]{Low: 157.48031496062993, High: 472.4409448818898},
						CountByOD: []ByOD[units.PerLength]{
							{OD: 0.016, Low: 236.2204724409449, High: 472.4409448818898},
							{OD: 0.0381, Low: 157.48031496062993, High: 433.07086614173227},
						},
						Strip:      Range[units.Length]{Low: 0.0003, High: 0.0005},
						FinMetals:  []string{"al1060", "al1050a", "al1100", "al3003", "c11000", "c12200", "cs1010", "ss409", "ss304"},
						TubeMetals: []string{"cs", "t11", "t22", "t5", "t9", "tp304", "tp316", "2205", "c70600", "c71500", "c44300", "c12200", "ti2", "825"},
						LeastWall:  0.0009000000000000001, Knurl: 0, Spindle: 15, Oiler: true, Growth: 0, Scatter: 0, StripRatio: 1, Joints: Joints{Short: 1, Long: 2, Until: 6, Apart: 3, Clear: 0.22},
						Tools: []Tool{
							{Height: 0.009524999999999999, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.0127, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.014, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
							{Height: 0.015875, Strip: 0.0004064, Count: Range[units.PerLength]{Low: 275.59055118110234, High: 433.07086614173227}},
						},
						Hardest: 260, BeadOut: 0.0001, BeadIn: 0.0005, Burr: 3e-05, Demands: []StripDemand{"soft", "certificate"},
						Weld: Weld{Power: 0, Heat: 0, Restart: 0, Edge: []EdgeSpeed(nil), Preheat: []Preheat(nil)},
					},
				},
			},
			{
				Name: "Line 2, embedded", TubeOD: Range[units.Length]{Low: 0.01905, High: 0.0508},
				Sizes:      []units.Length{0.01905, 0.025, 0.0254, 0.03175, 0.0381},
				TubeLength: Range[units.Length]{Low: 1.5, High: 17.5},
				StripWidth: Range[units.Length]{Low: 0.006, High: 0.026000000000000002},
				StripSpeed: 1.6, Drive: 15000, Idle: 2000, RunUp: 2.5, RunDown: 0.5, Jog: 0.1, Groover: Groover{Lifts: true, RunOut: 0.009000000000000001},
				Straight: Straightness{Bow: 0.002, Over: 2},
				ODOut:    0.00015, Securing: []Securing{
					{Way: "peening", Time: 12},
					{Way: "band", Time: 18},
				},
				Coils: []Coil{
					{Form: "traverse", OD: 0.86, ID: 0.28, Width: 0.35000000000000003, Mass: 420, Fill: 0.93, Change: 900},
					{Form: "pancake", OD: 0.86, ID: 0.28, Width: 0, Mass: 110, Fill: 0.98, Change: 300},
				},
				Racks:      Racks{Tubes: 40, Change: 480},
				Times:      Times{Load: 30, Secure: 12, Check: 900},
				ChangeOver: ChangeOver{Type: 10800, OD: 6000, Tooling: 4500, Pitch: 1800},
				FirstOff:   2, Tooling: Tooling{Rolls: 2600, RollsDays: 45, Size: 850, SizeDays: 20},
				Types: []Practice{{
					Type: "embedded", Height: Range[units.Length]{Low: 0.00635, High: 0.019},
					HeightByOD: []ByOD[units.Length]{
						{OD: 0.016, Low: 0.00635, High: 0.01},
						{OD: 0.01905, Low: 0.00635, High: 0.0127},
						{OD: 0.025, Low: 0.00635, High: 0.015875},
						{OD: 0.0254, Low: 0.00635, High: 0.015875},
						{OD: 0.03175, Low: 0.00635, High: 0.015875},
						{OD: 0.0381, Low: 0.00635, High: 0.019},
					},
					Count:      Range[units.PerLength]{Low: 196.8503937007874, High: 433.07086614173227},
					CountByOD:  []ByOD[units.PerLength]{},
					Strip:      Range[units.Length]{Low: 0.0003, High: 0.0005},
					FinMetals:  []string{"al1060", "al1050a", "al1100", "al3003", "c11000", "c12200", "cs1010", "ss409"},
					TubeMetals: []string{"cs", "t11", "t22", "t5", "t9", "tp304", "tp316", "2205", "c70600", "c71500", "825"},
					LeastWall:  0.0021000000000000003, Knurl: 0, Spindle: 11.666666666666666, Oiler: true, Growth: 0.001, Scatter: 0.0025, StripRatio: 1, Joints: Joints{Short: 1, Long: 2, Until: 6, Apart: 3, Clear: 0.22},
					Tools: []Tool{
						{Height: 0.009524999999999999, Strip: 0.0004, Count: Range[units.PerLength]{Low: 196.8503937007874, High: 433.07086614173227}},
						{Height: 0.0127, Strip: 0.0004, Count: Range[units.PerLength]{Low: 196.8503937007874, High: 433.07086614173227}},
						{Height: 0.015875, Strip: 0.0004, Count: Range[units.PerLength]{Low: 196.8503937007874, High: 433.07086614173227}},
						{Height: 0.009524999999999999, Strip: 0.0005, Count: Range[units.PerLength]{Low: 196.8503937007874, High: 354.33070866141736}},
					},
					Hardest: 210, BeadOut: 5e-05, BeadIn: 0.00025, Burr: 3e-05, Demands: []StripDemand{"soft", "certificate"},
					Weld: Weld{Power: 0, Heat: 0, Restart: 0, Edge: []EdgeSpeed(nil), Preheat: []Preheat(nil)},
				}},
			},
			{
				Name: "Line 3, welded", TubeOD: Range[units.Length]{Low: 0.03175, High: 0.14100000000000001},
				Sizes:      []units.Length{0.0381, 0.0508, 0.0603, 0.0761, 0.0889, 0.1143},
				TubeLength: Range[units.Length]{Low: 1.5, High: 17},
				StripWidth: Range[units.Length]{Low: 0.008, High: 0.032},
				StripSpeed: 2.6, Drive: 18500, Idle: 3000, RunUp: 3, RunDown: 0.4, Jog: 0.08333333333333333, Groover: Groover{Lifts: true, RunOut: 0},
				Straight: Straightness{Bow: 0.0035, Over: 2.5},
				ODOut:    0.0006, Securing: []Securing{},
				Coils: []Coil{
					{Form: "pancake", OD: 1.1500000000000001, ID: 0.42, Width: 0, Mass: 135, Fill: 0.96, Change: 540},
					{Form: "traverse", OD: 1.1500000000000001, ID: 0.42, Width: 0.31, Mass: 900, Fill: 0.92, Change: 1320},
				},
				Racks:      Racks{Tubes: 24, Change: 600},
				Times:      Times{Load: 50, Secure: 9, Check: 2700},
				ChangeOver: ChangeOver{Type: 14400, OD: 6600, Tooling: 3000, Pitch: 1200},
				FirstOff:   1, Tooling: Tooling{Rolls: 2600, RollsDays: 45, Size: 850, SizeDays: 20},
				Types: []Practice{{
					Type: "welded", Height: Range[units.Length]{Low: 0.009000000000000001, High: 0.03},
					HeightByOD: []ByOD[units.Length](nil), Count: Range[units.PerLength]{Low: 39.37007874015748, High: 255.90551181102364},
					CountByOD: []ByOD[units.PerLength](nil), Strip: Range[units.Length]{Low: 0.0009000000000000001, High: 0.0026000000000000003},
					FinMetals:  []string{"cs1010", "ss409", "ss304"},
					TubeMetals: []string{"cs", "t11", "t22", "t5", "t9", "tp304", "tp316"},
					LeastWall:  0.0026000000000000003, Knurl: 0, Spindle: 10.666666666666666, Oiler: false, Growth: 0, Scatter: 0.0001, StripRatio: 1, Joints: Joints{Short: 1, Long: 3, Until: 5, Apart: 2, Clear: 0.19},
					Tools:   []Tool{},
					Hardest: 0, BeadOut: 0, BeadIn: 0, Burr: 5e-05, Demands: []StripDemand{"degreased", "certificate"},
					Weld: Weld{
						Power: 95000, Heat: 5.2e+07, Restart: 35, Edge: []EdgeSpeed{
							{Metal: "cs1010", Strip: 0.0009000000000000001, Speed: 2},
							{Metal: "cs1010", Strip: 0.0013000000000000002, Speed: 1.6},
							{Metal: "cs1010", Strip: 0.0026000000000000003, Speed: 0.85},
							{Metal: "ss409", Strip: 0.0009000000000000001, Speed: 1.7},
							{Metal: "ss409", Strip: 0.0026000000000000003, Speed: 0.7},
							{Metal: "ss304", Strip: 0.0009000000000000001, Speed: 1.5},
							{Metal: "ss304", Strip: 0.0026000000000000003, Speed: 0.6},
						},
						Preheat: []Preheat{
							{Metal: "t5", Time: 150, Cost: 1.3},
							{Metal: "t9", Time: 170, Cost: 1.5},
						},
					},
				}},
			},
		},
		Forming: []Forming{
			{Metal: "aluminium", Stretch: 2.25, Tip: 0.00015, SpeedShare: 1, Work: 2.5e+08},
			{Metal: "copper", Stretch: 2.2, Tip: 0.00012, SpeedShare: 0.8, Work: 5e+08},
			{Metal: "carbon_steel", Stretch: 2, Tip: 0.00015, SpeedShare: 0.5, Work: 9e+08},
			{Metal: "stainless", Stretch: 2, Tip: 0.00015, SpeedShare: 0.4, Work: 1.2e+09},
		},
		Placing: Placing{Tolerance: 0.005, LeastFinned: 0.1, LeastBare: 0.04, Supports: 1.8, RolledEnd: 0.026000000000000002, ToolHeight: 0.0001, ToolStrip: 1.5e-05, Mismatch: 0.2, Strain: 0.001},
		Foot:    tube.Foot{By: "neutral_fibre", Bend: 0.45, Knurl: 0.00026000000000000003, Lap: 0.0003},
		Cutting: Cutting{
			Stock: []units.Length{6.5, 9.5, 13, 18},
			Kerf:  0.0025, TrimA: 0.01, TrimB: 0.015, Step: 0.001, Time: 40,
		},
		Buying: Buying{
			Tubes: "cut", Tolerance: 0.003, Extra: 0.04, Offcuts: 0, Quotes: []Quote{},
			OnHand:      []TubesOnHand{},
			StripOnHand: []StripOnHand{},
			PriceDays:   120, Coils: "cheaper", StripLeft: "scrap", Spoilt: "customer",
		},
		Measured: []Measured{},
		Losses:   Losses{CoilStart: 1.5, CoilEnd: 1, Joint: 0.1, Rejects: 0.01},
		Bundle:   Opening{Width: 0.41000000000000003, Height: 0.32},
		Crate: Crate{
			Width: 1.1, Height: 0.9, Length: 15.6, Clearance: 0.15, Separator: 0.004, Mass: 2500, Crane: 3000, Tackle: 70, Tare: 0.12, LayerLoad: 40, Slings: Range[float64]{Low: 0.21, High: 0.25},
			Payload: 24000, Bed: Bed{Length: 13.3, Width: 2.44, Stack: 2},
			Time: 5400, Cost: 280, PerMetre: 0,
		},
		Crew: Crew{People: 2, Shift: 28800, Efficiency: 0.8},
		Rates: Rates{
			Line: 0.018055555555555554, Person: 0.010555555555555556, TubeMetals: []Price{
				{Metal: "cs", Price: 1.9, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "t11", Price: 3.1, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "t22", Price: 3.4, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "t5", Price: 3.6, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "t9", Price: 4.4, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "tp304", Price: 6.2, MetalPrice: MetalPrice{Surcharge: 0.9, Dated: "2026-10-05"}},
				{Metal: "tp316", Price: 8.1, MetalPrice: MetalPrice{Surcharge: 1.3, Dated: "2026-10-05"}},
				{Metal: "2205", Price: 8.8, MetalPrice: MetalPrice{Surcharge: 1.4, Dated: "2026-10-05"}},
				{Metal: "c70600", Price: 14.5, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "c71500", Price: 19, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "c44300", Price: 10.5, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "c12200", Price: 12.5, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "ti2", Price: 38, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
				{Metal: "825", Price: 42, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-05"}},
			},
			FinMetals: []StripPrice{
				{Metal: "al1060", Price: 4.2, Scrap: 0.35000000000000003, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-19"}},
				{Metal: "al1050a", Price: 4.1, Scrap: 0.35000000000000003, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-19"}},
				{Metal: "al1100", Price: 4.3, Scrap: 0.35000000000000003, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-19"}},
				{Metal: "al3003", Price: 4.6, Scrap: 0.32, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-19"}},
				{Metal: "c11000", Price: 12.2, Scrap: 0.68, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-19"}},
				{Metal: "c12200", Price: 12.4, Scrap: 0.68, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-19"}},
				{Metal: "cs1010", Price: 1.7, Scrap: 0.14, MetalPrice: MetalPrice{Surcharge: 0, Dated: "2026-10-19"}},
				{Metal: "ss409", Price: 3.4, Scrap: 0.22, MetalPrice: MetalPrice{Surcharge: 0.35, Dated: "2026-10-19"}},
				{Metal: "ss304", Price: 5.2, Scrap: 0.27, MetalPrice: MetalPrice{Surcharge: 0.7, Dated: "2026-10-19"}},
			},
			Overhead: 0, Freight: 0, MarkUp: 0.17, Least: 0, Breaks: []int{1, 10, 50, 100, 500},
			Band: 0.15, BandDays: 30,
		},
		Steps: []Step{
			{
				Name: "Positive identification, before bundles are mixed", Kind: "identify", Used: true, When: "before", FinTypes: []string{},
				Families: []string{"low_alloy", "stainless", "copper_nickel", "brass", "copper", "titanium", "nickel"},
				Of:       "any_tubes", Who: "crew_does", PerTube: 12, PerOrder: 600, CostTube: 0, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Clean and degrease", Kind: "clean", Used: true, When: "before", FinTypes: []string{},
				Families: []string{},
				Of:       "any_tubes", Who: "crew_does", PerTube: 25, PerOrder: 1200, CostTube: 0.15, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Ball the bore", Kind: "gauge", Used: true, When: "before", FinTypes: []string{},
				Families: []string{},
				Of:       "free_tubes", Who: "crew_does", PerTube: 20, PerOrder: 600, CostTube: 0, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Eddy current test", Kind: "eddy_current", Used: true, When: "before", FinTypes: []string{"embedded"},
				Families: []string{},
				Of:       "bought_tubes", Who: "sub_let", PerTube: 0, PerOrder: 0, CostTube: 1.4, CostOrder: 180, Lead: 6, MarkUp: 0.08,
			},
			{
				Name: "Oil out of the bond, before the fin is wound", Kind: "oil_out", Used: true, When: "before", FinTypes: []string{"knurled_footed", "knurled_overlap", "embedded"},
				Families: []string{},
				Of:       "any_tubes", Who: "crew_does", PerTube: 10, PerOrder: 0, CostTube: 0, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Pressure test after finning, drain and dry", Kind: "pressure_test", Used: true, When: "after", FinTypes: []string{"embedded"},
				Families: []string{},
				Of:       "any_tubes", Who: "crew_does", PerTube: 90, PerOrder: 1800, CostTube: 0.2, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Preserve bare ends", Kind: "preserve", Used: true, When: "after", FinTypes: []string{},
				Families: []string{"carbon_steel", "low_alloy"},
				Of:       "any_tubes", Who: "crew_does", PerTube: 15, PerOrder: 600, CostTube: 0.1, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Cap the ends", Kind: "cap_ends", Used: true, When: "after", FinTypes: []string{},
				Families: []string{},
				Of:       "any_tubes", Who: "crew_does", PerTube: 10, PerOrder: 300, CostTube: 0.3, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Mark: heat number, item", Kind: "mark", Used: true, When: "after", FinTypes: []string{},
				Families: []string{},
				Of:       "any_tubes", Who: "crew_does", PerTube: 12, PerOrder: 600, CostTube: 0, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Certificates of tube and strip, EN 10204 3.1", Kind: "certificate", Used: true, When: "after", FinTypes: []string{},
				Families: []string{},
				Of:       "bought_tubes", Who: "crew_does", PerTube: 0, PerOrder: 1500, CostTube: 0, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
			{
				Name: "Inspection before packing", Kind: "inspect", Used: true, When: "after", FinTypes: []string{},
				Families: []string{},
				Of:       "any_tubes", Who: "crew_does", PerTube: 20, PerOrder: 1200, CostTube: 0, CostOrder: 0, Lead: 0, MarkUp: 0,
			},
		},
		Checks: []Check{
			{
				Kind: "count_short", FinTypes: []string{},
				Fins: 1, Off: 0,
			},
			{
				Kind: "count_long", FinTypes: []string{},
				Fins: 6, Off: 0,
			},
			{
				Kind: "fin_od", FinTypes: []string{},
				Fins: 0, Off: 0.0009000000000000001,
			},
			{
				Kind: "plain_ends", FinTypes: []string{},
				Fins: 0, Off: 0.004,
			},
			{
				Kind: "turn_by_hand", FinTypes: []string{"footed", "overlap_footed", "knurled_footed", "knurled_overlap"},
				Fins: 0, Off: 0,
			},
			{
				Kind: "pull_test", FinTypes: []string{"embedded"},
				Fins: 0, Off: 0,
			},
			{
				Kind: "end_security", FinTypes: []string{"footed", "overlap_footed", "knurled_footed", "knurled_overlap", "embedded", "edge_wound"},
				Fins: 0, Off: 0,
			},
			{
				Kind: "growth_check", FinTypes: []string{"knurled_footed", "knurled_overlap", "embedded"},
				Fins: 0, Off: 0,
			},
			{
				Kind: "weld_section", FinTypes: []string{"welded"},
				Fins: 0, Off: 0,
			},
		},
		Calendar: Calendar{
			WorkDays: []string{"mon", "tue", "wed", "thu", "fri"},
			Shifts:   1, Holidays: []string{"2026-12-24", "2026-12-25", "2027-01-01", "2027-12-24"},
			Approval: 9, Queue: 4, TubeLeads: []TubeLead{
				{
					Metal: "cs", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 31,
				},
				{
					Metal: "cs", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 24,
				},
				{
					Metal: "t11", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 45,
				},
				{
					Metal: "t11", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 38,
				},
				{
					Metal: "t22", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 45,
				},
				{
					Metal: "t22", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 38,
				},
				{
					Metal: "t5", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 60,
				},
				{
					Metal: "t5", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 50,
				},
				{
					Metal: "t9", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 60,
				},
				{
					Metal: "t9", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 50,
				},
				{
					Metal: "tp304", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 38,
				},
				{
					Metal: "tp304", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 31,
				},
				{
					Metal: "tp316", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 38,
				},
				{
					Metal: "tp316", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 31,
				},
				{
					Metal: "2205", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 66,
				},
				{
					Metal: "2205", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 52,
				},
				{
					Metal: "c70600", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 52,
				},
				{
					Metal: "c70600", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 45,
				},
				{
					Metal: "c71500", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 59,
				},
				{
					Metal: "c71500", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 52,
				},
				{
					Metal: "c44300", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 52,
				},
				{
					Metal: "c44300", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 45,
				},
				{
					Metal: "c12200", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 35,
				},
				{
					Metal: "c12200", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 28,
				},
				{
					Metal: "ti2", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 87,
				},
				{
					Metal: "ti2", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 73,
				},
				{
					Metal: "825", Way: "cut", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 94,
				},
				{
					Metal: "825", Way: "stock", OD: Range[units.Length]{Low: 0.012, High: 0.055},
					Days: 80,
				},
			},
			StripLeads: []StripLead{
				{Metal: "al1060", Form: "pancake", Days: 12},
				{Metal: "al1060", Form: "traverse", Days: 18},
				{Metal: "al1050a", Form: "pancake", Days: 12},
				{Metal: "al1050a", Form: "traverse", Days: 18},
				{Metal: "al1100", Form: "pancake", Days: 15},
				{Metal: "al1100", Form: "traverse", Days: 21},
				{Metal: "al3003", Form: "pancake", Days: 19},
				{Metal: "al3003", Form: "traverse", Days: 25},
				{Metal: "c11000", Form: "pancake", Days: 21},
				{Metal: "c11000", Form: "traverse", Days: 27},
				{Metal: "c12200", Form: "pancake", Days: 21},
				{Metal: "c12200", Form: "traverse", Days: 27},
				{Metal: "cs1010", Form: "pancake", Days: 14},
				{Metal: "cs1010", Form: "traverse", Days: 20},
				{Metal: "ss409", Form: "pancake", Days: 33},
				{Metal: "ss409", Form: "traverse", Days: 39},
				{Metal: "ss304", Form: "pancake", Days: 33},
				{Metal: "ss304", Form: "traverse", Days: 39},
			},
		},
		BoughtIn: []BoughtIn{
			{
				Type: "extruded", OD: Range[units.Length]{Low: 0.012, High: 0.027},
				PerMetre: 29, Days: 47, Dated: "2026-10-12",
			},
			{
				Type: "extruded", OD: Range[units.Length]{Low: 0.027, High: 0.039},
				PerMetre: 41, Days: 47, Dated: "2026-10-12",
			},
		},
		tree: map[string]interface{}(nil), from: 0,
	}
}

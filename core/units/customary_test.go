package units

import "testing"

func TestCustomary(t *testing.T) {
	for text, want := range map[string]bool{
		`1 1/4"`: true, "20' 6\"": true, "⅝ in": true, "14 BWG": true, "16 mil": true, "10 fpi": true, "10 /in": true,
		"10 per in": true, "394 fins/m": false, "212 °F": true, "20 hp": true, "10 Btu/h·ft²·°F": true,
		"25.4 mm": false, "120 kg/m": false, "3 m/min": false, "8 ft/min": true, "5 Fins/m": false,
		"145 psi": true, "100 psig": true, "200 gpm": true, "400 fpm": true, "0.5 inH₂O": true, "50 m³/h": false, "7 bar(g)": false,
	} {
		if got := customary(text); got != want {
			t.Errorf("customary(%q) = %v", text, got)
		}
	}
}

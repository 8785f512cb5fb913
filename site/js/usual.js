// A saved design as most are, which a link need not repeat (links.js). It is frozen: every link that was ever made is read with it.
export const usual = `{
 "format": "finwright-design",
 "version": 6,
 "head": {
  "reference": "",
  "revision": "",
  "received": "",
  "due": ""
 },
 "base": {
  "title": "",
  "units": "si",
  "fields": {
   "air_humidity": {
    "text": "50 %",
    "origin": "house"
   },
   "air_in": {
    "text": "30 °C",
    "origin": "house"
   },
   "air_start_up": {
    "text": "",
    "origin": "house"
   },
   "air_summer": {
    "text": "",
    "origin": "house"
   },
   "air_upset": {
    "text": "",
    "origin": "house"
   },
   "air_winter": {
    "text": "",
    "origin": "house"
   },
   "altitude": {
    "text": "0 m",
    "origin": "house"
   },
   "ask_certificate": {
    "text": "shop",
    "origin": "house"
   },
   "ask_eddy_current": {
    "text": "shop",
    "origin": "house"
   },
   "ask_gauge": {
    "text": "shop",
    "origin": "house"
   },
   "ask_identify": {
    "text": "shop",
    "origin": "house"
   },
   "ask_inspect": {
    "text": "shop",
    "origin": "house"
   },
   "ask_pressure_test": {
    "text": "shop",
    "origin": "house"
   },
   "bead_inside": {
    "text": "",
    "origin": "house"
   },
   "bead_outside": {
    "text": "",
    "origin": "house"
   },
   "bond_resistance": {
    "text": "",
    "origin": "house"
   },
   "bundles": {
    "text": "1",
    "origin": "house"
   },
   "burning_air_water": {
    "text": "0.9 %",
    "origin": "house"
   },
   "burnt_by": {
    "text": "excess",
    "origin": "house"
   },
   "coldest_air": {
    "text": "",
    "origin": "house"
   },
   "draught": {
    "text": "forced",
    "origin": "house"
   },
   "drawing_approved": {
    "text": "",
    "origin": "house"
   },
   "drop_allowed": {
    "text": "",
    "origin": "house"
   },
   "drop_method": {
    "text": "rule",
    "origin": "house"
   },
   "duty_wanted": {
    "text": "",
    "origin": "house"
   },
   "end_security": {
    "text": "shop",
    "origin": "house"
   },
   "excess_air": {
    "text": "16 %",
    "origin": "house"
   },
   "face_velocity": {
    "text": "3 m/s",
    "origin": "house"
   },
   "fan_area": {
    "text": "",
    "origin": "house"
   },
   "fan_bears": {
    "text": "",
    "origin": "house"
   },
   "fan_efficiency": {
    "text": "65 %",
    "origin": "house"
   },
   "fan_entry": {
    "text": "30 %",
    "origin": "house"
   },
   "film_coefficient": {
    "text": "50 W/m²K",
    "origin": "house"
   },
   "film_method": {
    "text": "rule",
    "origin": "house"
   },
   "film_source": {
    "text": "computed",
    "origin": "house"
   },
   "fin_height": {
    "text": "5/8 in",
    "origin": "house"
   },
   "fin_metal": {
    "text": "al1060",
    "origin": "house"
   },
   "fin_od_most": {
    "text": "",
    "origin": "house"
   },
   "fin_pitch": {
    "text": "10 fpi",
    "origin": "house"
   },
   "fin_profile": {
    "text": "as_made",
    "origin": "house"
   },
   "fin_type": {
    "text": "footed",
    "origin": "house"
   },
   "flow_lost": {
    "text": "untold",
    "origin": "house"
   },
   "flue_basis": {
    "text": "wet",
    "origin": "house"
   },
   "flue_by": {
    "text": "shares",
    "origin": "house"
   },
   "flue_water": {
    "text": "",
    "origin": "house"
   },
   "foot_lap": {
    "text": "",
    "origin": "house"
   },
   "fouling_inside": {
    "text": "0.00018 m²K/W",
    "origin": "house"
   },
   "fouling_outside": {
    "text": "0 m²K/W",
    "origin": "house"
   },
   "frame_share": {
    "text": "40 %",
    "origin": "house"
   },
   "fuel_carbon": {
    "text": "74.3 %",
    "origin": "house"
   },
   "fuel_hydrogen": {
    "text": "23.9 %",
    "origin": "house"
   },
   "fuel_nitrogen": {
    "text": "1.2 %",
    "origin": "house"
   },
   "fuel_oxygen": {
    "text": "0.6 %",
    "origin": "house"
   },
   "fuel_sulphur": {
    "text": "",
    "origin": "house"
   },
   "gas": {
    "text": "air",
    "origin": "house"
   },
   "glycol_share": {
    "text": "35 %",
    "origin": "house"
   },
   "groove_depth": {
    "text": "0.25 mm",
    "origin": "house"
   },
   "hold_air": {
    "text": "usual",
    "origin": "house"
   },
   "hold_process": {
    "text": "inlet",
    "origin": "house"
   },
   "hold_space": {
    "text": "usual",
    "origin": "house"
   },
   "house_limit": {
    "text": "",
    "origin": "house"
   },
   "inside_drop_allowed": {
    "text": "",
    "origin": "house"
   },
   "inside_flow": {
    "text": "15 kg/s",
    "origin": "house"
   },
   "inside_fluid": {
    "text": "water",
    "origin": "house"
   },
   "inside_in": {
    "text": "90 °C",
    "origin": "house"
   },
   "inside_out": {
    "text": "",
    "origin": "house"
   },
   "inside_pressure": {
    "text": "1000 kPa",
    "origin": "house"
   },
   "job_kind": {
    "text": "new",
    "origin": "house"
   },
   "joints_allowed": {
    "text": "",
    "origin": "house"
   },
   "layout": {
    "text": "staggered",
    "origin": "house"
   },
   "least_wall": {
    "text": "",
    "origin": "house"
   },
   "line": {
    "text": "",
    "origin": "house"
   },
   "margin": {
    "text": "",
    "origin": "house"
   },
   "metal_temperature": {
    "text": "",
    "origin": "house"
   },
   "od_tolerance": {
    "text": "",
    "origin": "house"
   },
   "old_length": {
    "text": "",
    "origin": "house"
   },
   "old_pitch": {
    "text": "",
    "origin": "house"
   },
   "old_tubes": {
    "text": "",
    "origin": "house"
   },
   "old_ua": {
    "text": "",
    "origin": "house"
   },
   "ordered": {
    "text": "",
    "origin": "house"
   },
   "own_fin_conductivity": {
    "text": "200 W/m·K",
    "origin": "house"
   },
   "own_fin_density": {
    "text": "2700 kg/m³",
    "origin": "house"
   },
   "own_fin_expansion": {
    "text": "23 µm/m·K",
    "origin": "house"
   },
   "own_fin_name": {
    "text": "Alloy 2",
    "origin": "house"
   },
   "own_fluid_at": {
    "text": "60 °C",
    "origin": "house"
   },
   "own_fluid_at_2": {
    "text": "100 °C",
    "origin": "house"
   },
   "own_fluid_at_3": {
    "text": "140 °C",
    "origin": "house"
   },
   "own_fluid_conductivity": {
    "text": "0.13 W/m·K",
    "origin": "house"
   },
   "own_fluid_conductivity_2": {
    "text": "0.127 W/m·K",
    "origin": "house"
   },
   "own_fluid_conductivity_3": {
    "text": "0.124 W/m·K",
    "origin": "house"
   },
   "own_fluid_density": {
    "text": "850 kg/m³",
    "origin": "house"
   },
   "own_fluid_density_2": {
    "text": "826 kg/m³",
    "origin": "house"
   },
   "own_fluid_density_3": {
    "text": "802 kg/m³",
    "origin": "house"
   },
   "own_fluid_heat": {
    "text": "2100 J/kg·K",
    "origin": "house"
   },
   "own_fluid_heat_2": {
    "text": "2260 J/kg·K",
    "origin": "house"
   },
   "own_fluid_heat_3": {
    "text": "2420 J/kg·K",
    "origin": "house"
   },
   "own_fluid_phase": {
    "text": "liquid",
    "origin": "house"
   },
   "own_fluid_points": {
    "text": "1",
    "origin": "house"
   },
   "own_fluid_pour": {
    "text": "",
    "origin": "house"
   },
   "own_fluid_pressure": {
    "text": "",
    "origin": "house"
   },
   "own_fluid_vapour": {
    "text": "",
    "origin": "house"
   },
   "own_fluid_viscosity": {
    "text": "5 mPa·s",
    "origin": "house"
   },
   "own_fluid_viscosity_2": {
    "text": "2.1 mPa·s",
    "origin": "house"
   },
   "own_fluid_viscosity_3": {
    "text": "1.2 mPa·s",
    "origin": "house"
   },
   "own_gas_conductivity": {
    "text": "0.045 W/m·K",
    "origin": "house"
   },
   "own_gas_density": {
    "text": "0.6 kg/m³",
    "origin": "house"
   },
   "own_gas_heat": {
    "text": "1100 J/kg·K",
    "origin": "house"
   },
   "own_gas_viscosity": {
    "text": "0.03 mPa·s",
    "origin": "house"
   },
   "own_tube_conductivity": {
    "text": "50 W/m·K",
    "origin": "house"
   },
   "own_tube_density": {
    "text": "7850 kg/m³",
    "origin": "house"
   },
   "own_tube_expansion": {
    "text": "12 µm/m·K",
    "origin": "house"
   },
   "own_tube_name": {
    "text": "Alloy 1",
    "origin": "house"
   },
   "oxygen_left": {
    "text": "2.8 %",
    "origin": "house"
   },
   "passes": {
    "text": "2",
    "origin": "house"
   },
   "plain_end_a": {
    "text": "1 1/2 in",
    "origin": "house"
   },
   "plain_end_b": {
    "text": "1 1/2 in",
    "origin": "house"
   },
   "position_tolerance": {
    "text": "",
    "origin": "house"
   },
   "quantity": {
    "text": "1",
    "origin": "house"
   },
   "rolled_length": {
    "text": "",
    "origin": "house"
   },
   "root_basis": {
    "text": "tube",
    "origin": "house"
   },
   "row_pitch": {
    "text": "",
    "origin": "house"
   },
   "rows": {
    "text": "4",
    "origin": "house"
   },
   "share_co2": {
    "text": "8.3 %",
    "origin": "house"
   },
   "share_h2o": {
    "text": "16.2 %",
    "origin": "house"
   },
   "share_n2": {
    "text": "72.4 %",
    "origin": "house"
   },
   "share_o2": {
    "text": "3.1 %",
    "origin": "house"
   },
   "share_so2": {
    "text": "",
    "origin": "house"
   },
   "sleeve_thickness": {
    "text": "0.5 mm",
    "origin": "house"
   },
   "spares": {
    "text": "0",
    "origin": "house"
   },
   "start_up": {
    "text": "",
    "origin": "house"
   },
   "steam_by": {
    "text": "temperature",
    "origin": "house"
   },
   "strip_thickness": {
    "text": "0.4 mm",
    "origin": "house"
   },
   "supply": {
    "text": "ours",
    "origin": "house"
   },
   "support_spacing": {
    "text": "",
    "origin": "house"
   },
   "tip_clearance": {
    "text": "1/4 in",
    "origin": "house"
   },
   "tip_thickness": {
    "text": "0.2 mm",
    "origin": "house"
   },
   "to_trioxide": {
    "text": "2.5 %",
    "origin": "house"
   },
   "tube_bow": {
    "text": "",
    "origin": "house"
   },
   "tube_bow_over": {
    "text": "",
    "origin": "house"
   },
   "tube_hardness": {
    "text": "",
    "origin": "house"
   },
   "tube_length": {
    "text": "18 ft",
    "origin": "house"
   },
   "tube_metal": {
    "text": "cs",
    "origin": "house"
   },
   "tube_metal_limit": {
    "text": "",
    "origin": "house"
   },
   "tube_od": {
    "text": "1 in",
    "origin": "house"
   },
   "tube_pitch": {
    "text": "",
    "origin": "house"
   },
   "tube_wall": {
    "text": "14 BWG",
    "origin": "house"
   },
   "tubes_per_row": {
    "text": "30",
    "origin": "house"
   },
   "turndown": {
    "text": "",
    "origin": "house"
   },
   "upset": {
    "text": "",
    "origin": "house"
   },
   "velocity_basis": {
    "text": "actual",
    "origin": "house"
   },
   "wall_basis": {
    "text": "average",
    "origin": "house"
   }
  },
  "spans": []
 },
 "items": [
  {
   "id": "1",
   "design": {}
  }
 ]
}`;

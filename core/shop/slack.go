package shop

// Slack is the share by which a value may pass a limit: sizes converted from
// inches must not fail a limit written in millimetres, or the other way round.
const Slack = 1e-9

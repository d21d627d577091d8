namespace ShelfSafe.Heat;

/// <summary>
/// Physics of heat in jars, to explain why guidance is as it is: standard atmosphere, boiling and steam temperature, lethality,
/// thermal properties, conduction, convection and broken heating. Lengths in metres, pressures in pascals (absolute unless called
/// gauge), times in seconds, temperatures in degrees Celsius, the unit in each name.
/// </summary>
/// <remarks>
/// Nothing here may set, shorten, lengthen or permit a process. Tested processes come from published guidance alone: heating rate,
/// lag, fill, headspace, come-up and starting temperature of a kitchen batch are unknown, so a computed lethality replaces nothing.
/// The room knows no food and no rule and imports no other room.
/// </remarks>
internal static class NamespaceDoc;

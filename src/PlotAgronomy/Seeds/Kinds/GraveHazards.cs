using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Hazards for which nobody is told to sow a kind that was not asked for: plain poison, and prussic acid beyond a
/// trace.</summary>
internal static class GraveHazards
{
    private static readonly Lazy<IReadOnlySet<string>> Rows = new(() =>
        new Table<string>("Seeds/Data/grave-hazards.csv", row =>
            Key(row.Choice<HazardType>("type"), row.Text("level"))
        ).Rows.ToHashSet()
    );

    internal static bool Holds(KindHazard hazard) => Rows.Value.Contains(Key(hazard.Type, hazard.Level));

    private static string Key(HazardType type, string level) => $"{type}: {level}";
}

using System.Collections.Immutable;

namespace PlotAgronomy.Weather;

/// <summary>What speaks for and against sowing on one day, part by part.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlantingDay
{
    internal static EnumWords<PlantingVerdict> VerdictWords { get; } = EnumWords<PlantingVerdict>.FromNames();

    internal PlantingDay() { }

    /// <summary>Gets the date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Gets the rain of the week after sowing, as far as it is told.</summary>
    public required RainOutlook Rain { get; init; }

    /// <summary>Gets the chance of enough rain in that week.</summary>
    public required RainChance Enough { get; init; }

    /// <summary>Gets when the kind is up.</summary>
    public required EmergenceOutlook Emergence { get; init; }

    /// <summary>Gets the reasons, most serious first: a warning speaks against sowing, a caution asks for care, a note speaks for
    /// it.</summary>
    public required ImmutableArray<Finding> Reasons { get; init; }

    /// <summary>Gets the verdict: that of the most serious reason.</summary>
    public PlantingVerdict Verdict =>
        Reasons.Select(r => r.Severity).DefaultIfEmpty().Max() switch
        {
            FindingSeverity.Warning => PlantingVerdict.Wait,
            FindingSeverity.Caution => PlantingVerdict.SowWithCare,
            _ => PlantingVerdict.Sow,
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Date:yyyy-MM-dd}: {VerdictWords[Verdict]}");
}

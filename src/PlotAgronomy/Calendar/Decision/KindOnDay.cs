using System.Collections.Immutable;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>What speaks for and against sowing one kind on one day.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindOnDay
{
    internal KindOnDay() { }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind => Sown.Kind;

    /// <summary>Gets the kind and where its seed will lie.</summary>
    public required KindToSow Sown { get; init; }

    /// <summary>Gets the rain of the week after, and when the kind is up.</summary>
    public required PlantingDay Day { get; init; }

    /// <summary>Gets the dates of the kind, were it sown on that day.</summary>
    public required KindDates Dates { get; init; }

    /// <summary>Gets the fewest days, one after the other, that the surface stays moist for its seed.</summary>
    public required int FewestMoistDays { get; init; }

    /// <summary>Gets the most days, one after the other, that the surface stays moist for its seed.</summary>
    public required int MostMoistDays { get; init; }

    /// <summary>Gets the reasons, most serious first.</summary>
    public required ImmutableArray<Finding> Reasons { get; init; }

    /// <summary>Gets the verdict: that of the most serious reason.</summary>
    public PlantingVerdict Verdict => Verdicts.Of(Reasons);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.ShortName}: {PlantingDay.VerdictWords[Verdict]}";
}

using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What is left when it is not what it should be, and the pace with which the load ends with the plot.</summary>
/// <param name="left">What is left of the whole load.</param>
/// <param name="load">The whole load.</param>
/// <param name="acresDone">Ground sown.</param>
/// <param name="acresLeft">Ground left.</param>
/// <param name="keptTime">Time for 100 ft so far; null without a timed run.</param>
internal sealed class HalfWayTurn(Mass left, Mass load, double acresDone, double acresLeft, TimeSpan? keptTime)
{
    /// <summary>Gets what is left of the whole load.</summary>
    internal Mass Left => left;

    /// <summary>Gets how many times as long 100 ft take from here on; a pure number.</summary>
    internal double TimesAsLong => SpreaderMath.Ratio(RateNeeded, RateSoFar);

    /// <summary>Gets the time for 100 ft from here on; null without a timed run.</summary>
    internal TimeSpan? TimePer100Feet =>
        keptTime is { } kept
            ? TimeSpan.FromSeconds(SpreaderMath.SecondsForTheRest(kept.TotalSeconds, RateNeeded, RateSoFar))
            : null;

    private double Used => load.Pounds - left.Pounds;

    private double RateSoFar => SpreaderMath.PoundsPerAcreSown(Used, acresDone);

    private double RateNeeded => SpreaderMath.PoundsPerAcreSown(left.Pounds, acresLeft);

    /// <summary>The lines of the sum.</summary>
    internal IEnumerable<WorkedLine> ShowWork()
    {
        yield return SpreadingFormulas
            .All["spread-rate-so-far"]
            .Line(
                $"{Amounts.Print(RateSoFar, 3)} lb/ac",
                ("weight used", Amounts.Print(Used, 3)),
                ("ground sown", Amounts.Print(acresDone, 4))
            );
        yield return SpreadingFormulas
            .All["spread-rate-needed"]
            .Line(
                $"{Amounts.Print(RateNeeded, 3)} lb/ac",
                ("weight left", Amounts.Print(left.Pounds, 3)),
                ("ground left", Amounts.Print(acresLeft, 4))
            );
        if (TimePer100Feet is { } time)
        {
            yield return SpreadingFormulas
                .All["spread-time-from-half-way"]
                .Line(
                    Amounts.Print(time, "s", 1),
                    ("time for 100 ft", Amounts.Print(keptTime!.Value, "s", 1)),
                    ("rate needed", Amounts.Print(RateNeeded, 3)),
                    ("rate so far", Amounts.Print(RateSoFar, 3))
                );
        }
    }
}

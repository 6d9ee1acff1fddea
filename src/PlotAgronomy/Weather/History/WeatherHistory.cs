using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Observed weather, day by day, as it was handed in. What was not observed is null.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class WeatherHistory
{
    internal WeatherHistory() { }

    /// <summary>Gets the name of the file, or what else it was made of.</summary>
    public required string FileName { get; init; }

    /// <summary>Gets the days in order, each date once; dates may be missing.</summary>
    public required ImmutableArray<WeatherDay> Days { get; init; }

    /// <summary>Gets the remarks on what was read, most serious first.</summary>
    public ImmutableArray<Finding> Findings
    {
        get
        {
            var remarks = new List<Finding>();
            if (DroppedValues > 0)
            {
                remarks.Add(FindingCatalog.Create(WeatherCodes.FlaggedDropped, ("count", DateText.Of(DroppedValues))));
            }

            int incomplete = Days.Count(d => d.Rain is null || d.High is null || d.Low is null);
            if (incomplete > 0)
            {
                remarks.Add(FindingCatalog.Create(WeatherCodes.DaysIncomplete, ("count", DateText.Of(incomplete))));
            }

            return Finding.InOrder(remarks);
        }
    }

    /// <summary>Values that failed a check of the service and were left out.</summary>
    internal int DroppedValues { get; init; }

    /// <summary>Makes a history of days.</summary>
    /// <param name="days">Days, in any order.</param>
    /// <param name="name">What they were taken from, used in messages.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentException">No day, or a date that stands twice.</exception>
    public static WeatherHistory FromDays(IReadOnlyList<WeatherDay> days, string name = "as typed")
    {
        Guard.NotEmpty(days);
        ImmutableArray<WeatherDay> ordered = [.. days.OrderBy(d => d.Date)];
        return ordered.Select(d => d.Date).Distinct().Count() == ordered.Length
            ? new() { FileName = name, Days = ordered }
            : throw new ArgumentException("A date stands twice.", nameof(days));
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{FileName}: {Amounts.Print(Days.Length, 0)} days observed";
}

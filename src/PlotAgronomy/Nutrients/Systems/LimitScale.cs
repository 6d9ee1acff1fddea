using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>Builds a scale whose limits a system computes (from exchange capacity, say) and does not print as a table.</summary>
internal static class LimitScale
{
    /// <summary>Classes below each limit in turn, and a last one open above.</summary>
    internal static RatingScale Of(
        string id,
        DomainReading reading,
        CropRow crop,
        string scope,
        Origin origin,
        ImmutableArray<(string Name, double High, bool HighIncluded)> limited,
        string openClass
    )
    {
        var classes = ImmutableArray.CreateBuilder<RatingClass>();
        double start = 0;
        bool startIncluded = true;
        foreach (var (name, high, included) in limited)
        {
            classes.Add(Class(name, high, included));
            (start, startIncluded) = (high, !included);
        }

        classes.Add(Class(openClass, null, false));
        return new RatingScale
        {
            Id = id,
            Analyte = reading.Reading.Analyte,
            Extractants = [reading.Reading.Extractant],
            Unit = reading.Unit,
            Crops = [crop],
            Condition = ScaleCondition.None,
            Scope = scope,
            Classes = classes.ToImmutable(),
            Sources = origin.Sources,
        };

        RatingClass Class(string name, double? high, bool included) =>
            new()
            {
                Order = classes.Count + 1,
                Name = name,
                Standing = StandingOf(name),
                PrintedLow = start,
                PrintedHigh = high,
                HighIncluded = included,
                StartsAt = start,
                StartIncluded = startIncluded,
                Origin = origin,
            };
    }

    /// <summary>Below its level a system feeds; at it there is enough; beyond its limit it stops.</summary>
    private static RatingStanding StandingOf(string name) =>
        name switch
        {
            "build-up" or "below target" or "responsive" or "not sufficient" => RatingStanding.Below,
            "maintenance" or "at or above target" or "not responsive" or "sufficient" => RatingStanding.Enough,
            "drawdown" or "none" => RatingStanding.Above,
            _ => RatingStanding.NotComparable,
        };
}

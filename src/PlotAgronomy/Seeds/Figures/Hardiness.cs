using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Cold a kind stands.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class Hardiness
{
    /// <summary>Gets what the limit means.</summary>
    public required ColdLimitKind Kind { get; init; }

    /// <summary>Gets the colder end of the limit, air temperature; null when the kind normally overwinters.</summary>
    public Temperature? LimitFrom { get; init; }

    /// <summary>Gets the milder end of the limit, air temperature; null when the kind normally overwinters.</summary>
    public Temperature? LimitTo { get; init; }

    /// <summary>Gets the hardiness in words.</summary>
    public required string Note
    {
        get;
        init => field = Guard.NotNull(value, nameof(Note));
    }

    /// <summary>Gets the sources.</summary>
    public required Origin Evidence
    {
        get;
        init => field = Guard.NotNull(value, nameof(Evidence));
    }

    internal static Hardiness? Of(KindObservations kind)
    {
        var limits = kind.EachMethod("cold-limit").Where(l => !l.IsAside).ToList();
        if (limits.Count == 0)
        {
            return null;
        }

        int best = limits.Min(PrintedSpan.RankOf);
        limits.RemoveAll(l => PrintedSpan.RankOf(l) != best);
        var meaning = limits[0].MethodOf<ColdLimitKind>();
        for (int i = 1; i < limits.Count; i++)
        {
            if (limits[i].MethodOf<ColdLimitKind>() != meaning || limits.Take(i).Any(limits[i].Repeats))
            {
                throw limits[i].Problem("figure", "a kind has one cold limit of one meaning, from each publication once");
            }
        }

        double? from = null,
            to = null;
        foreach (var limit in limits)
        {
            if (limit.RangeBesideWords("f") is var (low, high))
            {
                from = from < low ? from : low;
                to = to > high ? to : high;
            }
        }

        return new()
        {
            Kind = meaning,
            LimitFrom = Degrees(from),
            LimitTo = Degrees(to),
            Note = string.Join("; ", limits.Select(l => l.WordsBesideRange()).Distinct()),
            Evidence = limits.Count == 1 ? limits[0].Origin : KindOrigins.Together([.. limits]),
        };
    }

    private static Temperature? Degrees(double? fahrenheit) => fahrenheit is { } f ? Temperature.FromDegreesFahrenheit(f) : null;

    /// <summary>The note on the cold, or its limit.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        Note.Length > 0 ? Note
        : Limits is var limits && limits.Length > 0 ? limits
        : "overwinters";

    private string Limits =>
        string.Join(" to ", new[] { LimitFrom, LimitTo }.OfType<Temperature>().Select(Fahrenheit).Distinct());

    private static string Fahrenheit(Temperature temperature)
    {
        double degrees = temperature.DegreesFahrenheit;
        return $"{Amounts.Print(degrees, 0)} F";
    }
}

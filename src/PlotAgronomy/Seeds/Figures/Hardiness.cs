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
        var limits = kind.EachMethod("cold-limit").ToList();
        if (limits.Count > 1)
        {
            throw limits[1].Problem("figure", "a kind has one cold limit");
        }

        return limits.Count == 0 ? null : Of(limits[0]);
    }

    private static Hardiness Of(KindObservation limit)
    {
        var range = limit.RangeBesideWords("f");
        return new()
        {
            Kind = limit.MethodOf<ColdLimitKind>(),
            LimitFrom = Degrees(range?.Low),
            LimitTo = Degrees(range?.High),
            Note = limit.WordsBesideRange(),
            Evidence = limit.Origin,
        };
    }

    private static Temperature? Degrees(double? fahrenheit) => fahrenheit is { } f ? Temperature.FromDegreesFahrenheit(f) : null;
}

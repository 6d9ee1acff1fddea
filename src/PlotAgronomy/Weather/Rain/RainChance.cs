namespace PlotAgronomy.Weather;

/// <summary>Chance of at least an amount of rain: one number for each way to join the periods of a forecast.</summary>
/// <remarks>No rule is right for every weather: rain that persists lies nearer the strongest period, showers that come and go
/// nearer
/// independent periods. Take both ends.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RainChance
{
    internal RainChance() { }

    /// <summary>Gets the chance where one event holds the whole amount, as likely as the strongest period.</summary>
    public required Fraction AsStrongestPeriod { get; init; }

    /// <summary>Gets the chance where one event holds the whole amount, as likely as any rain in independent periods.</summary>
    public required Fraction AsOneOfIndependent { get; init; }

    /// <summary>Gets the chance where every period rains by itself, and their amounts add up.</summary>
    public required Fraction AsIndependentPeriods { get; init; }

    /// <summary>Gets the lowest of the three.</summary>
    public Fraction Low => Min(AsStrongestPeriod, Min(AsOneOfIndependent, AsIndependentPeriods));

    /// <summary>Gets the highest of the three.</summary>
    public Fraction High => Max(AsStrongestPeriod, Max(AsOneOfIndependent, AsIndependentPeriods));

    private static Fraction Min(Fraction one, Fraction other) => one < other ? one : other;

    private static Fraction Max(Fraction one, Fraction other) => one > other ? one : other;

    /// <summary>What it is, in whole percent: both ends, or one number where they are alike.</summary>
    /// <returns>Text such as <c>54 to 73 %</c>.</returns>
    public override string ToString()
    {
        string low = Amounts.Print(Low, 0);
        string high = Amounts.Print(High, 0);
        return low == high ? low : $"{low.Replace(" %", "", StringComparison.Ordinal)} to {high}";
    }
}

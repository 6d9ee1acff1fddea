using System.Globalization;

namespace PlotAgronomy.Nutrients;

/// <summary>One class of a rating scale with its limits as printed and the side that is closed.</summary>
/// <remarks>Where whole numbers are printed with a gap (25, then 26), a value between them belongs to the higher class
/// only when it is above the printed upper limit; so the upper limit is closed. Source PRACTICE for the gap.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RatingClass
{
    internal RatingClass() { }

    /// <summary>Gets the place in the scale, counted from 1 at the poorest.</summary>
    public required int Order { get; init; }

    /// <summary>Gets the name as printed, such as <c>medium</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Gets what the class says in words that compare across systems (common practice).</summary>
    public RatingStanding Standing { get; init; }

    /// <summary>Gets the lower limit as printed, a pure number in the scale's unit.</summary>
    public required double PrintedLow { get; init; }

    /// <summary>Gets the upper limit as printed, a pure number in the scale's unit; null when the class is open above.</summary>
    public double? PrintedHigh { get; init; }

    /// <summary>Gets whether the upper limit itself belongs to this class.</summary>
    public required bool HighIncluded { get; init; }

    /// <summary>Gets the number the class starts at: the upper limit of the class below, or 0.</summary>
    public required double StartsAt { get; init; }

    /// <summary>Gets whether <see cref="StartsAt"/> itself belongs to this class.</summary>
    public required bool StartIncluded { get; init; }

    /// <summary>Gets where the limits stand and how well that is known.</summary>
    public required Origin Origin { get; init; }

    /// <summary>The limits in words, with the closed side.</summary>
    /// <returns>Text such as <c>up to 25</c>, <c>above 25, up to 50</c> or <c>from 15, below 30</c>.</returns>
    public string LimitsInWords()
    {
        string from = StartIncluded ? "from" : "above";
        string low = string.Create(CultureInfo.InvariantCulture, $"{from} {StartsAt:0.###}");
        if (PrintedHigh is not { } limit)
        {
            return low;
        }

        string upTo = HighIncluded ? "up to" : "below";
        string high = string.Create(CultureInfo.InvariantCulture, $"{upTo} {limit:0.###}");
        return StartsAt == 0 ? high : $"{low}, {high}";
    }

    /// <summary>Name and limits.</summary>
    /// <returns>Text such as <c>medium (above 25, up to 50)</c>.</returns>
    public override string ToString() => $"{Name} ({LimitsInWords()})";
}

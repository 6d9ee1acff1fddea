using System.Globalization;

namespace PlotAgronomy.Blends;

/// <summary>Sum of shares of a full stand, with the range that published full rates leave open.</summary>
/// <remarks>1 is one full stand. The default is no stand at all.</remarks>
[JsonConverter(typeof(JsonTextConverter<StandTotal>))]
public readonly record struct StandTotal : IJsonText<StandTotal>
{
    private StandTotal(double lowest, double chosen, double highest)
    {
        Lowest = lowest;
        Chosen = chosen;
        Highest = highest;
    }

    /// <summary>Gets the total against the highest published full rate of every kind.</summary>
    public double Lowest { get; }

    /// <summary>Gets the total against the full rates the blend is counted by.</summary>
    public double Chosen { get; }

    /// <summary>Gets the total against the lowest published full rate of every kind.</summary>
    public double Highest { get; }

    /// <summary>Sum of two totals.</summary>
    /// <param name="left">First.</param>
    /// <param name="right">Second.</param>
    /// <returns>The sum, end by end.</returns>
    public static StandTotal operator +(StandTotal left, StandTotal right) =>
        new(left.Lowest + right.Lowest, left.Chosen + right.Chosen, left.Highest + right.Highest);

    /// <summary>Text such as <c>1.5 full stands (0.72-2.63 over the published full rates)</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Chosen:0.##} full stands ({Lowest:0.##}-{Highest:0.##} over the published full rates)"
        );

    internal static StandTotal Of(double lowest, double chosen, double highest) => new(lowest, chosen, highest);

    static string IJsonText<StandTotal>.ToJsonText(StandTotal value) =>
        $"{ExactText.Of(value.Chosen)} ({ExactText.Of(value.Lowest)} to {ExactText.Of(value.Highest)}) full stands";

    static StandTotal IJsonText<StandTotal>.FromJsonText(string text)
    {
        var (chosen, range) = ExactText.Halves(ExactText.Before(text, ") full stands"), " (");
        var (lowest, highest) = ExactText.Halves(range, " to ");
        return new(Stands(lowest), Stands(chosen), Stands(highest));
    }

    private static double Stands(string text) => Guard.AtLeast(ExactText.Number(text), 0, "full stands", nameof(text));
}

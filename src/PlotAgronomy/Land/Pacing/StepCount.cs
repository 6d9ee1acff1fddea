using System.Globalization;

namespace PlotAgronomy.Land;

/// <summary>Steps counted while walking a line.</summary>
/// <remarks>A pace means one step in some books and two in others, so the count says which. Held in single steps.
/// The default is zero.</remarks>
[JsonConverter(typeof(JsonTextConverter<StepCount>))]
public readonly record struct StepCount : IJsonText<StepCount>
{
    private StepCount(double singleSteps) => SingleSteps = singleSteps;

    /// <summary>Gets the count in single steps: left, right.</summary>
    public double SingleSteps { get; }

    /// <summary>Creates a count of single steps.</summary>
    /// <param name="singleSteps">Steps; finite, at least 0.</param>
    /// <returns>The count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static StepCount FromSingleSteps(double singleSteps) => new(Guard.AtLeast(singleSteps, 0, "steps"));

    /// <summary>Creates a count of double paces.</summary>
    /// <param name="doublePaces">Falls of the same foot; finite, at least 0.</param>
    /// <returns>The count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static StepCount FromDoublePaces(double doublePaces) =>
        FromSingleSteps(2 * Guard.AtLeast(doublePaces, 0, "double paces"));

    /// <summary>Invariant text such as <c>84 steps</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{SingleSteps:0.##} steps");

    static string IJsonText<StepCount>.ToJsonText(StepCount value) => $"{ExactText.Of(value.SingleSteps)} steps";

    static StepCount IJsonText<StepCount>.FromJsonText(string text) => FromSingleSteps(ExactText.Number(text, "steps"));
}

using System.Globalization;

namespace PlotAgronomy.Land;

/// <summary>Steepness of the ground.</summary>
/// <remarks>Held as rise over run. The default is level ground.</remarks>
[JsonConverter(typeof(JsonTextConverter<Slope>))]
public readonly record struct Slope : IJsonText<Slope>
{
    private const double DegreesPerRadian = 180 / Math.PI;

    private Slope(double risePerRun) => RisePerRun = risePerRun;

    /// <summary>Gets level ground.</summary>
    internal static Slope Level => default;

    /// <summary>Gets rise over run, a pure number.</summary>
    public double RisePerRun { get; }

    /// <summary>Gets the slope in percent: 100 x rise / run.</summary>
    public double Percent => RisePerRun * 100;

    /// <summary>Gets the slope in degrees above level.</summary>
    public double Degrees => Math.Atan(RisePerRun) * DegreesPerRadian;

    /// <summary>Gets ground length over map length: 1 / cos(slope).</summary>
    internal double GroundPerMap => LandMath.GroundPerMap(RisePerRun);

    /// <summary>Creates a slope from percent.</summary>
    /// <param name="percent">100 x rise / run; from 0 to 200 %.</param>
    /// <returns>The slope.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 200, NaN or infinite.</exception>
    public static Slope FromPercent(double percent) =>
        new(Guard.Between(percent, 0, LandConstants.All["steepest-percent"], "%") / 100);

    /// <summary>Creates a slope from degrees.</summary>
    /// <param name="degrees">Degrees above level; from 0 to 60.</param>
    /// <returns>The slope.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 60, NaN or infinite.</exception>
    public static Slope FromDegrees(double degrees) =>
        new(Math.Tan(Guard.Between(degrees, 0, LandConstants.All["steepest-degrees"], "degrees") / DegreesPerRadian));

    /// <summary>Invariant text such as <c>12 %</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Percent:0.##} %");

    static string IJsonText<Slope>.ToJsonText(Slope value) => $"{ExactText.Of(value.RisePerRun, shift: 2)} %";

    static Slope IJsonText<Slope>.FromJsonText(string text)
    {
        Guard.Between(ExactText.Number(text, "%"), 0, LandConstants.All["steepest-percent"], "%", nameof(text));
        return new(ExactText.Number(text, "%", shift: 2));
    }
}

using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>The error of a measured rate, from the errors of what was measured.</summary>
/// <remarks>First order: dR/R adds the relative errors of weight, time, distance, speed and swath; independent errors add as
/// the root of the sum of squares. A steady mistake (always walking slow) does not average out.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RateErrorBudget
{
    internal RateErrorBudget() { }

    /// <summary>Gets the terms that are not zero.</summary>
    public required ImmutableArray<RateErrorTerm> Terms { get; init; }

    /// <summary>Gets the combined error, plus or minus, in percent of the rate.</summary>
    public double CombinedPercent => SpreaderMath.Root(SpreaderMath.SumOfSquares([.. Terms.Select(t => t.Percent)]));

    /// <summary>Gets the largest term, worth improving first; null when every measurement counts as exact.</summary>
    public RateErrorTerm? Largest => Terms.MaxBy(t => t.Percent);

    /// <summary>Error of a planned rate from how well pace, spacing and flow are kept.</summary>
    /// <param name="setting">Rate, flow, speed and swath that belong together.</param>
    /// <param name="errors">Errors; of these weight and time belong to the catch the flow was measured with.</param>
    /// <param name="caught">Weight caught when the flow was measured; above 0.</param>
    /// <param name="time">Time of that catch; above 0.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static RateErrorBudget ForTimedCatch(SpreaderSetting setting, MeasuringErrors errors, Mass caught, TimeSpan time)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(errors);
        double pounds = caught.Pounds;
        double seconds = Guard.Above(time.TotalSeconds, 0, "s", nameof(time));
        double milesPerHour = setting.Speed.MilesPerHour;
        double feet = setting.Swath.Feet;
        return Of(
            Weight(errors, Guard.Above(pounds, 0, "lb", nameof(caught))),
            ("time", Guard.AtLeast(errors.Time.TotalSeconds, 0, "s", nameof(errors)) / seconds),
            Pace(errors, milesPerHour),
            Swath(errors, feet)
        );
    }

    internal static RateErrorBudget Of(params ReadOnlySpan<(string Measurement, double Relative)> terms)
    {
        var kept = ImmutableArray.CreateBuilder<RateErrorTerm>();
        foreach (var (measurement, relative) in terms)
        {
            if (relative > 0)
            {
                kept.Add(new RateErrorTerm(measurement, relative * 100));
            }
        }

        return new RateErrorBudget { Terms = kept.ToImmutable() };
    }

    internal static (string Measurement, double Relative) Weight(MeasuringErrors errors, double pounds)
    {
        double error = errors.Scale.Pounds;
        return ("weight", Guard.AtLeast(error, 0, "lb", nameof(errors)) / pounds);
    }

    internal static (string Measurement, double Relative) Distance(MeasuringErrors errors, double feet)
    {
        double error = errors.Distance.Feet;
        return ("distance", Guard.AtLeast(error, 0, "ft", nameof(errors)) / feet);
    }

    internal static (string Measurement, double Relative) Swath(MeasuringErrors errors, double feet)
    {
        double error = errors.Swath.Feet;
        return ("swath", Guard.AtLeast(error, 0, "ft", nameof(errors)) / feet);
    }

    internal static (string Measurement, double Relative) Pace(MeasuringErrors errors, double milesPerHour)
    {
        double error = errors.Pace.MilesPerHour;
        return ("pace", Guard.AtLeast(error, 0, "mph", nameof(errors)) / milesPerHour);
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"+-{Amounts.Print(CombinedPercent, 1)} % of the rate";
}

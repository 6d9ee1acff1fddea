using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What a choice of the first pass does to the rim of the plot and to the seed, on one edge.</summary>
/// <remarks>Parts of the full rate are of the mean between the passes. Source: closed form, integrals of the single-pass
/// pattern.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class FirstPassEffect : IWorkedResult
{
    private const int Steps = 8000;

    internal FirstPassEffect() { }

    /// <summary>Gets the placement.</summary>
    public required FirstPassPlacement Placement { get; init; }

    /// <summary>Gets the rate at the very edge as a part of the full rate; a pure number.</summary>
    public required double EdgeRate { get; init; }

    /// <summary>Gets the mean rate from the edge to half a swath inside, as a part of the full rate; a pure number.</summary>
    public required double RimRate { get; init; }

    /// <summary>Gets what falls outside this edge, as a part of what one pass throws; a pure number.</summary>
    public required double LostPart { get; init; }

    private double FullRate { get; init; }

    private double OnePass { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <summary>Works out a placement for an edge to the left of the first pass.</summary>
    /// <param name="pattern">Single pass; mirror it for an edge to the right.</param>
    /// <param name="swath">Spacing of the passes; from 0.1 to 10,000 ft, and no less than a five-hundredth of the reach.</param>
    /// <param name="placement">Where the first pass runs.</param>
    /// <returns>What it does to that edge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>Passes run at a, a + S, a + 2 S ... from the edge, a = S / 2 or 0, all seen the same way. Rate at x = sum of p(x
    /// - path) over (total / S).</remarks>
    public static FirstPassEffect For(SpreadPattern pattern, Length swath, FirstPassPlacement placement)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        Guard.Defined(placement);
        double swathFeet = PatternMath.SwathFeet(pattern, swath);
        double firstFeet = placement == FirstPassPlacement.OnEdge ? 0 : swathFeet / 2;
        double total = Integral(pattern.AmountAt, pattern.LeftFeet, pattern.RightFeet);
        double full = total / swathFeet;
        double RateAt(double x)
        {
            double sum = 0;
            for (double path = firstFeet; path <= x - pattern.LeftFeet; path += swathFeet)
            {
                sum += pattern.AmountAt(x - path);
            }

            return SpreaderMath.Ratio(sum, full);
        }

        return new FirstPassEffect
        {
            Placement = placement,
            EdgeRate = RateAt(0),
            RimRate = Integral(RateAt, 0, swathFeet / 2) / (swathFeet / 2),
            LostPart = SpreaderMath.Ratio(Lost(pattern, firstFeet, swathFeet), total),
            FullRate = full,
            OnePass = total,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-edge-rate"]
                .Line(
                    $"{Amounts.Print(100 * EdgeRate, 0)} %",
                    ("thrown there by all passes", Amounts.Print(EdgeRate * FullRate, 3)),
                    ("full rate", Amounts.Print(FullRate, 3))
                ),
            SpreadingFormulas
                .All["spread-rim-rate"]
                .Line(
                    $"{Amounts.Print(100 * RimRate, 0)} %",
                    ("mean to half a swath inside", Amounts.Print(RimRate * FullRate, 3)),
                    ("full rate", Amounts.Print(FullRate, 3))
                ),
            SpreadingFormulas
                .All["spread-lost-part"]
                .Line(
                    $"{Amounts.Print(100 * LostPart, 1)} % of a pass",
                    ("thrown beyond the edge", Amounts.Print(LostPart * OnePass, 3)),
                    ("one pass", Amounts.Print(OnePass, 3))
                ),
        ];

    /// <summary>Thrown beyond the edge by the first pass and those after it that reach so far.</summary>
    private static double Lost(SpreadPattern pattern, double firstFeet, double swathFeet)
    {
        double lost = 0;
        for (double path = firstFeet; -path > pattern.LeftFeet; path += swathFeet)
        {
            lost += Integral(pattern.AmountAt, pattern.LeftFeet, Math.Min(-path, pattern.RightFeet));
        }

        return lost;
    }

    private static double Integral(Func<double, double> f, double from, double to)
    {
        double step = (to - from) / Steps,
            sum = (f(from) + f(to)) / 2;
        for (int i = 1; i < Steps; i++)
        {
            sum += f(from + i * step);
        }

        return sum * step;
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}

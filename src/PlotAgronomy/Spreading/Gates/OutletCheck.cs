using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Whether the rows or outlets of a drill feed alike.</summary>
/// <remarks>Each outlet should be within 5 % of the mean of all (SPREAD-S5, SPREAD-S6).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class OutletCheck : IWorkedResult
{
    internal OutletCheck() { }

    /// <summary>Gets the mean catch of an outlet.</summary>
    public required Mass Mean { get; init; }

    /// <summary>Gets how far each outlet is above (positive) or below the mean, in percent, in the order given.</summary>
    public required ImmutableArray<double> OffMeanPercent { get; init; }

    private ImmutableArray<double> CaughtPounds { get; init; } = [];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingConstants.All.Find("outlet-tolerance").Origin.Sources;

    /// <summary>Compares outlets.</summary>
    /// <param name="catches">Weight caught at each outlet over the same turns; at least two, each at least 0, not all 0.</param>
    /// <returns>The mean, and a finding for each outlet that is off.</returns>
    /// <exception cref="ArgumentException">Fewer than two outlets, or nothing caught.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static OutletCheck For(IReadOnlyList<Mass> catches)
    {
        var pounds = Guard.NotEmpty(catches).Select(c => Guard.AtLeast(c.Pounds, 0, "lb", nameof(catches))).ToList();
        double mean = pounds.Average();
        if (pounds.Count < 2 || mean == 0)
        {
            throw new ArgumentException("At least two outlets are compared, and something must be caught.", nameof(catches));
        }

        double limit = SpreadingConstants.All["outlet-tolerance"];
        ImmutableArray<double> off = [.. pounds.Select(p => SpreaderMath.RelativeOff(p, mean) * 100)];
        return new OutletCheck
        {
            Mean = Mass.FromPounds(mean),
            CaughtPounds = [.. pounds],
            OffMeanPercent = off,
            Findings =
            [
                .. off.Select((o, i) => (Off: o, Outlet: i + 1))
                    .Where(o => Tolerance.IsAbove(Math.Abs(o.Off), limit))
                    .Select(o =>
                        FindingCatalog.Create(
                            SpreadingCodes.OutletOff,
                            ("outlet", Amounts.Print(o.Outlet, 0)),
                            ("off", Amounts.Print(o.Off, 1)),
                            ("limit", Amounts.Print(limit, 0))
                        )
                    ),
            ],
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. OffMeanPercent.Select(
                (o, i) =>
                    SpreadingFormulas
                        .All["spread-outlet-off-mean"]
                        .Line(
                            $"{Amounts.Print(o, 1)} %",
                            ("outlet", Amounts.Print(i + 1, 0)),
                            ("catch", Amounts.Print(CaughtPounds[i], 4)),
                            ("mean", Amounts.Print(Mean.Pounds, 4))
                        )
            ),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}

using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Half way over the plot: what must be left in hopper and bags, and the pace for the rest when it is more or
/// less.</summary>
/// <remarks>Left = load x (1 - part sown). New time for 100 ft = time x rate needed / rate so far, where the rate so far is
/// weight used / ground sown and the rate needed is weight left / ground left. The gate stays.</remarks>
internal sealed class HalfWay : IWorkedResult
{
    private readonly WalkedPass pass;
    private readonly double partSown;

    private HalfWay(WalkedPass pass, double partSown)
    {
        this.pass = pass;
        this.partSown = partSown;
    }

    /// <summary>Gets the number of the pass after which to look; null where none are laid, and where the plot is walked twice:
    /// then it is when it was walked once.</summary>
    internal int? AfterPass { get; private init; }

    /// <summary>Gets what must be left of the whole load.</summary>
    internal Mass Left => Mass.FromPounds(SpreaderMath.PoundsLeft(pass.Load.Pounds, partSown));

    /// <summary>Gets the same in half fillings of the hopper; null where it is filled once, or between two halves.</summary>
    internal int? HalfFillingsLeft
    {
        get
        {
            double halves = (pass.Fillings ?? 0) * (1 - partSown) * 2;
            int whole = (int)Math.Round(halves, MidpointRounding.AwayFromZero);
            return pass.Fillings > 1 && Tolerance.AreEqual(halves, whole) ? whole : null;
        }
    }

    /// <summary>Gets what is done where more is left than that by a tenth.</summary>
    internal HalfWayTurn More => Turn(1);

    /// <summary>Gets what is done where less is left than that by a tenth.</summary>
    internal HalfWayTurn Less => Turn(-1);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <summary>Half way of a pass; null where it is not walked, or where half of it is too little to be weighed.</summary>
    internal static HalfWay? Of(WalkedPass pass, FieldPasses? laid)
    {
        int? after = pass.IsCrosswise || laid is not { Passes.Length: > 1 } ? null : NearestToHalf(laid);
        double sown = after is { } last ? PartSown(laid!, last) : 0.5;
        var half = new HalfWay(pass, sown) { AfterPass = after };
        return pass.IsTooMany || half.Left.Ounces < SpreadingConstants.All["least-catch"] ? null : half;
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-left-half-way"]
                .Line(
                    Amounts.Print(Left, "lb", 3),
                    ("load", Amounts.Print(pass.Load.Pounds, 3)),
                    ("part sown", Amounts.Print(partSown, 3))
                ),
            .. More.ShowWork(),
            .. Less.ShowWork(),
        ];

    private static int NearestToHalf(FieldPasses laid) =>
        Enumerable
            .Range(1, laid.Passes.Length - 1)
            .MinBy(number => Math.Round(Math.Abs(PartSown(laid, number) - 0.5), 9, MidpointRounding.AwayFromZero));

    private static double PartSown(FieldPasses laid, int pass) =>
        SpreaderMath.Ratio(laid.CoveredAfter(pass).SquareFeet, laid.CoveredAfter(laid.Passes.Length).SquareFeet);

    /// <summary>A tenth of the smaller part, so that neither more than all nor less than nothing is left.</summary>
    private HalfWayTurn Turn(int sign)
    {
        double load = pass.Load.Pounds;
        double right = Left.Pounds;
        double off = SpreadingConstants.All["half-way-off"] / 100 * Math.Min(right, load - right);
        double acres = pass.Rate.AreaCoveredBy(pass.Load).Acres;
        var left = Mass.FromPounds(right + (sign * off));
        return new(left, pass.Load, acres * partSown, acres * (1 - partSown), pass.TimePer100Feet);
    }
}

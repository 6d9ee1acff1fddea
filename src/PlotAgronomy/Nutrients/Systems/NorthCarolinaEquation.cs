using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>One of the printed parabolas of index.</summary>
internal sealed record NorthCarolinaEquation(
    int Number,
    double A,
    double B,
    double C,
    bool IsPerAcre,
    double ZeroAboveIndex,
    bool IsUsable,
    string? Note,
    Origin Origin
)
{
    private static readonly Lazy<IReadOnlyDictionary<int, NorthCarolinaEquation>> ByNumber = new(() =>
        Table
            .Read("Nutrients/Data/nc-equations.csv", r => new NorthCarolinaEquation(
                r.Integer("equation"),
                r.Number("a"),
                r.Number("b"),
                r.Number("c"),
                r.Choice<PrintedUnit>("rate_unit") == PrintedUnit.PoundsPerAcre,
                r.NumberOrNull("zero_above_index") ?? double.PositiveInfinity,
                r.YesOrNo("usable"),
                r.TextOrNull("note"),
                r.Origin()
            ))
            .ToDictionary(e => e.Number)
    );

    private double FirstZero { get; } = SystemMath.FirstZero(A, B, C);

    private enum PrintedUnit
    {
        PoundsPerAcre,
        PoundsPer1000SquareFeet,
    }

    /// <summary>Index from which the advice is none.</summary>
    internal double StopsAt => Math.Min(FirstZero, ZeroAboveIndex);

    internal static NorthCarolinaEquation Find(int number) =>
        ByNumber.Value[number] is { IsUsable: true } equation
            ? equation
            : throw new KeyNotFoundException($"Equation {number} is not used: {ByNumber.Value[number].Note}.");

    /// <summary>The curve with the range that a row prints about it.</summary>
    internal CurveNeedKernel Kernel(double range) =>
        new()
        {
            A = A,
            B = B,
            C = C,
            FirstZero = FirstZero,
            ZeroAboveIndex = ZeroAboveIndex,
            Range = range,
        };

    internal double Rate(double index) => Kernel(0).Rate(index, 0);
}

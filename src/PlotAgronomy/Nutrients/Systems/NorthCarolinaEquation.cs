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

    private enum PrintedUnit
    {
        PoundsPerAcre,
        PoundsPer1000SquareFeet,
    }

    /// <summary>Index from which the advice is none.</summary>
    internal double StopsAt => Math.Min(SystemMath.FirstZero(A, B, C), ZeroAboveIndex);

    internal static NorthCarolinaEquation Find(int number) =>
        ByNumber.Value[number] is { IsUsable: true } equation
            ? equation
            : throw new KeyNotFoundException($"Equation {number} is not used: {ByNumber.Value[number].Note}.");

    internal double Rate(double index) => SystemMath.FallingParabola(index, A, B, C, ZeroAboveIndex);
}

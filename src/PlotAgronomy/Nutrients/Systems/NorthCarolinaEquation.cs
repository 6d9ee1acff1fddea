using System.Collections.Frozen;
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
    bool IsUsable
)
{
    private static readonly Lazy<FrozenDictionary<int, NorthCarolinaEquation>> ByNumber = new(() =>
        CsvTable
            .Embedded(
                "Nutrients/Data/nc-equations.csv",
                "id",
                "equation",
                "a",
                "b",
                "c",
                "rate_unit",
                "zero_above_index",
                "usable",
                "note",
                "source_id",
                "locator",
                "status"
            )
            .Rows.Select(r => new NorthCarolinaEquation(
                r.Integer("equation"),
                r.Number("a"),
                r.Number("b"),
                r.Number("c"),
                r.Text("rate_unit") == "PoundsPerAcre",
                r.NumberOrNull("zero_above_index") ?? double.PositiveInfinity,
                r.YesOrNo("usable")
            ))
            .ToFrozenDictionary(e => e.Number)
    );

    /// <summary>Index from which the advice is none.</summary>
    internal double StopsAt => Math.Min(SystemMath.FirstZero(A, B, C), ZeroAboveIndex);

    internal static NorthCarolinaEquation Find(int number) =>
        ByNumber.Value[number] is { IsUsable: true } equation
            ? equation
            : throw new KeyNotFoundException($"Equation {number} looks misprinted and is not used.");

    internal double Rate(double index) => SystemMath.FallingParabola(index, A, B, C, ZeroAboveIndex);
}

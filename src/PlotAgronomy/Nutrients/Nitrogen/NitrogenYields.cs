using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>A rule's printed table of yields and nitrogen, read in between by straight lines and never beyond its ends.</summary>
internal sealed class NitrogenYields
{
    private static readonly Lazy<ILookup<string, (double Yield, double Pounds)>> Points = Table.Grouped(
        "Nutrients/Data/nitrogen-yields.csv",
        r => r.Text("rule_id"),
        r => (r.Number("yield"), r.Number("nitrogen_lb_per_ac"))
    );

    private readonly ImmutableArray<(double Yield, double Pounds)> points;
    private readonly bool isInPounds;

    private NitrogenYields(ImmutableArray<(double Yield, double Pounds)> points, bool isInPounds)
    {
        this.points = points;
        this.isInPounds = isInPounds;
    }

    private string Unit => isInPounds ? "lb/ac" : NutrientWords.YieldsPerAcre[YieldUnit.Bushel];

    /// <summary>The table of a rule; empty for a rule that is stated otherwise.</summary>
    internal static NitrogenYields Of(string ruleId, bool isInPounds) => new([.. Points.Value[ruleId]], isInPounds);

    /// <summary>Nitrogen in lb/ac, or null outside the table.</summary>
    internal double? PoundsFor(CropYield yield)
    {
        double expected = InUnit(yield);
        return expected < points[0].Yield || expected > points[^1].Yield
            ? null
            : Interpolation.Between(points.AsSpan(), expected);
    }

    /// <summary>The straight line between the two printed yields beside the expected one.</summary>
    internal WorkedLine Line(string rule, CropYield yield, string answer)
    {
        double expected = InUnit(yield);
        int above = 1;
        while (points[above].Yield < expected)
        {
            above++;
        }

        return NutrientFormulas
            .All["nitrogen-between-yields"]
            .Line(
                answer,
                ("rule", rule),
                ("yield", NutrientFormulas.Number(expected)),
                ("yield below", NutrientFormulas.Number(points[above - 1].Yield)),
                ("yield above", NutrientFormulas.Number(points[above].Yield)),
                ("N below", NutrientFormulas.Number(points[above - 1].Pounds)),
                ("N above", NutrientFormulas.Number(points[above].Pounds))
            );
    }

    internal Finding Outside(string rule, CropYield yield) =>
        FindingCatalog.Create(
            NutrientCodes.NitrogenOutsideTable,
            ("rule", rule),
            ("low", Amounts.Print(points[0].Yield, 4)),
            ("high", Amounts.Print(points[^1].Yield, 4)),
            ("unit", Unit),
            ("yield", Amounts.Print(InUnit(yield), 4))
        );

    private double InUnit(CropYield yield) => isInPounds ? yield.PerAcre * ExactUnits.PoundsPerShortTon : yield.PerAcre;
}

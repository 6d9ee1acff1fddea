using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>One printed equation of manganese availability with its coefficients.</summary>
internal sealed class ManganeseEquation
{
    private readonly Formula formula;
    private readonly double perUnit;
    private readonly double perPh;

    private ManganeseEquation(string title, string formula, string constant, string perUnit, string perPh)
    {
        Title = title;
        Constant = NutrientConstants.All.Find(constant);
        this.formula = NutrientFormulas.All[formula];
        this.perUnit = NutrientConstants.All[perUnit];
        this.perPh = NutrientConstants.All[perPh];
    }

    internal static ManganeseEquation NorthCarolinaA { get; } =
        new(
            "the manganese availability index, equation A",
            "nc-manganese-index-a",
            "NC-Mn-A-constant",
            "NC-Mn-per-index",
            "NC-Mn-per-pH"
        );

    internal static ManganeseEquation NorthCarolinaB { get; } =
        new(
            "the manganese availability index, equation B",
            "nc-manganese-index-b",
            "NC-Mn-B-constant",
            "NC-Mn-per-index",
            "NC-Mn-per-pH"
        );

    internal static ManganeseEquation NewJersey { get; } =
        new(
            "the manganese availability index of New Jersey",
            "nj-manganese-index",
            "NJ-Mn-constant",
            "NJ-Mn-per-ppm",
            "NJ-Mn-per-pH"
        );

    internal string Title { get; }

    internal Constant Constant { get; }

    internal double IndexAt(double test, double waterPh) => SystemMath.ManganeseIndex(Constant, perUnit, test, perPh, waterPh);

    internal WorkedLine Line(double test, double waterPh, double index) =>
        formula.Line(
            Amounts.Print(index, 1),
            ("what", Title),
            ("constant", Amounts.Print(Constant, 1)),
            ("per index", Amounts.Print(perUnit, 2)),
            ("per ppm", Amounts.Print(perUnit, 2)),
            ("Mn index", Amounts.Print(test, 4)),
            ("Mn in ppm", Amounts.Print(test, 4)),
            ("per pH", Amounts.Print(perPh, 1)),
            ("pH", Amounts.Print(waterPh, 2))
        );
}

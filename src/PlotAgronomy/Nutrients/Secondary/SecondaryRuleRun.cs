using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>One rule asked of one report.</summary>
internal sealed class SecondaryRuleRun(SecondaryRule rule, SoilReport report, SecondarySetting setting)
{
    private readonly List<Finding> findings = [];

    internal SecondaryAnswer Run()
    {
        if (rule.Status == DataStatus.Memory)
        {
            findings.Add(MemoryGate.FindingFor(rule.Title, rule.SourceId));
        }

        double? test = null;
        if (rule.Rows[0].Analyte is { } analyte)
        {
            test = new SecondaryTest(rule.Title, report, findings).ValueFor(analyte, rule.Rows[0]);
            if (test is null)
            {
                return Silent();
            }
        }

        foreach (var row in rule.Rows.Where(r => r.SoilClass is null || r.SoilClass == (setting.SoilClass ?? report.SoilClass)))
        {
            if (Missing(row) is { } fact)
            {
                findings.Add(FindingCatalog.Create(NutrientCodes.SecondaryFactMissing, ("rule", rule.Title), ("fact", fact)));
                return Silent();
            }

            if (Applies(row, test))
            {
                return Rate(row, test);
            }
        }

        if (rule.Rows.All(r => r.SoilClass is not null) && (setting.SoilClass ?? report.SoilClass) is null)
        {
            findings.Add(
                FindingCatalog.Create(NutrientCodes.SecondaryFactMissing, ("rule", rule.Title), ("fact", "The soil class"))
            );
            return Silent();
        }

        return Answer(
            ApplicationRate.Zero,
            ApplicationRate.Zero,
            false,
            test is { } value
                ? $"the test is high enough ({Amounts.Print(value, 4)}), so none is needed"
                : "it does not apply here, so none is needed",
            test
        );
    }

    private string? Missing(SecondaryRuleRow row) =>
        (row.PhAbove is not null || row.PerPh is not null) && report.WaterPh is null ? "The water pH"
        : row.OrganicMatterAtMostPercent is not null && report.OrganicMatter is null ? "The organic matter"
        : row.SandyOnly && report.Texture is null ? "The texture of the soil"
        : row.Condition == SecondaryCondition.TissueSulfurLow && setting.TissueSulfur is null ? "A tissue test"
        : null;

    private bool Applies(SecondaryRuleRow row, double? test)
    {
        bool testLow =
            test is not { } value
            || row.Holds(value)
            || (
                row.Nutrient == PlantNutrient.Magnesium
                && setting.MagnesiumSaturation is { } saturation
                && saturation.Percent < NutrientConstants.All["magnesium-saturation-low"]
            );
        return testLow
            && !(row.PhAbove is { } above && report.WaterPh!.Value <= above)
            && !(row.OrganicMatterAtMostPercent is { } most && report.OrganicMatter!.Value.Percent > most)
            && !(row.SandyOnly && report.Texture is not (SoilTexture.Sand or SoilTexture.LoamySand or SoilTexture.SandyLoam))
            && !(
                row.Condition == SecondaryCondition.TissueSulfurLow
                && setting.TissueSulfur!.Value.Percent >= NutrientConstants.All["tissue-sulfur-low"]
            );
    }

    private SecondaryAnswer Rate(SecondaryRuleRow row, double? test)
    {
        string reason = row.Advice ?? "as printed";
        if (row.Condition == SecondaryCondition.NoLimeDue && setting.IsLimeDue)
        {
            findings.Add(FindingCatalog.Create(NutrientCodes.MagnesiumDolomite));
            return Answer(ApplicationRate.Zero, ApplicationRate.Zero, true, "dolomitic lime brings it", test);
        }

        if (row.RateLow is not { } low || row.RateHigh is not { } high)
        {
            return Answer(null, null, true, reason, test);
        }

        var from = ApplicationRate.FromPoundsPerAcre(Pounds(low));
        var to = ApplicationRate.FromPoundsPerAcre(Pounds(high));
        if (row.Nutrient == PlantNutrient.Boron)
        {
            findings.Add(
                to > ApplicationRate.Zero
                    ? FindingCatalog.Create(NutrientCodes.BoronToxicity, ("rate", Amounts.Print(to.PoundsPerAcre, 4)))
                    : FindingCatalog.Create(NutrientCodes.BoronDiscouraged)
            );
        }

        var line = row.PerTest is null ? null : EquationLine(row, low, test ?? 0, to);
        return Answer(from, to, to > ApplicationRate.Zero, reason, test, line);

        double Pounds(double constant) =>
            row.PerPh is { } perPh
                ? SecondaryMath.TriStateTrace(constant, row.PerTest ?? 0, test ?? 0, perPh, report.WaterPh!.Value)
            : row.PerTest is { } perTest ? SecondaryMath.KansasZinc(constant, perTest, test ?? 0)
            : Math.Max(0, constant);
    }

    /// <summary>The rule's equation; what it prints with a minus is held as a negative number.</summary>
    private WorkedLine EquationLine(SecondaryRuleRow row, double constant, double test, ApplicationRate rate) =>
        NutrientFormulas
            .All[row.PerPh is null ? "kansas-zinc" : "tri-state-zinc-manganese"]
            .Line(
                $"{Amounts.Print(rate.PoundsPerAcre, 1)} lb/ac",
                ("what", $"{SoilWords.For(rule.Nutrient)}, {rule.Title}"),
                ("constant", NutrientFormulas.Number(Math.Abs(constant))),
                ("pounds a ppm", NutrientFormulas.Number(-row.PerTest ?? 0)),
                ("test", NutrientFormulas.Number(test)),
                ("pounds a pH unit", NutrientFormulas.Number(row.PerPh ?? 0)),
                ("pH", NutrientFormulas.Number(report.WaterPh?.Value ?? 0))
            );

    private SecondaryAnswer Silent() => Answer(null, null, null, "no figure", null);

    private SecondaryAnswer Answer(
        ApplicationRate? low,
        ApplicationRate? high,
        bool? needed,
        string reason,
        double? test,
        WorkedLine? equation = null
    ) => new(rule, low, high, needed, reason, test, findings) { Equation = equation };
}

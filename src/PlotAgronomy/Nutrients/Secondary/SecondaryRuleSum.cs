using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>One rule asked of one report.</summary>
internal sealed class SecondaryRuleSum(
    ImmutableArray<SecondaryRuleRow> rows,
    PlotSoil soil,
    SecondaryRequest request,
    List<Finding>? findings = null
)
{
    private readonly SoilReport report = soil.Report;

    private SoilClass? SoilClass => soil.SoilClass;

    internal SecondaryOutcome Run()
    {
        if (rows[0].Status == DataStatus.Memory)
        {
            findings?.Add(MemoryGate.FindingFor(rows[0].Title, rows[0].Origin));
        }

        double? test = null;
        if (rows[0].Analyte is { } analyte)
        {
            test = new SecondaryTest(rows[0].Title, report, findings).ValueFor(analyte, rows[0]);
            if (test is null)
            {
                return Silent();
            }
        }

        foreach (var row in rows)
        {
            if (row.SoilClass is not null && row.SoilClass != SoilClass)
            {
                continue;
            }

            if (Missing(row) is { } fact)
            {
                findings?.Add(FindingCatalog.Create(NutrientCodes.SecondaryFactMissing, ("rule", rows[0].Title), ("fact", fact)));
                return Silent();
            }

            if (Applies(row, test))
            {
                return Rate(row, test);
            }
        }

        if (SoilClass is null && rows.All(r => r.SoilClass is not null))
        {
            findings?.Add(
                FindingCatalog.Create(NutrientCodes.SecondaryFactMissing, ("rule", rows[0].Title), ("fact", "The soil class"))
            );
            return Silent();
        }

        return new SecondaryOutcome
        {
            Low = ApplicationRate.Zero,
            High = ApplicationRate.Zero,
            IsNeeded = false,
            Test = test,
        };
    }

    private string? Missing(SecondaryRuleRow row) =>
        (row.PhAbove is not null || row.PerPh is not null) && report.WaterPh is null ? "The water pH"
        : row.OrganicMatterAtMostPercent is not null && report.OrganicMatter is null ? "The organic matter"
        : row.SandyOnly && soil.Texture is null ? "The texture of the soil"
        : row.Condition == SecondaryCondition.TissueSulfurLow && request.TissueSulfur is null ? "A tissue test"
        : null;

    private bool Applies(SecondaryRuleRow row, double? test)
    {
        bool testLow =
            test is not { } value
            || row.Holds(value)
            || (
                row.Nutrient == PlantNutrient.Magnesium
                && request.MagnesiumSaturation is { } saturation
                && saturation.Percent < NutrientConstants.All["magnesium-saturation-low"]
            );
        return testLow
            && !(row.PhAbove is { } above && report.WaterPh!.Value <= above)
            && !(row.OrganicMatterAtMostPercent is { } most && report.OrganicMatter!.Value.Percent > most)
            && !(row.SandyOnly && soil.Texture is not (SoilTexture.Sand or SoilTexture.LoamySand or SoilTexture.SandyLoam))
            && !(
                row.Condition == SecondaryCondition.TissueSulfurLow
                && request.TissueSulfur!.Value.Percent >= NutrientConstants.All["tissue-sulfur-low"]
            );
    }

    private SecondaryOutcome Rate(SecondaryRuleRow row, double? test)
    {
        string reason = row.Advice ?? "as printed";
        if (row.Condition == SecondaryCondition.NoLimeDue && request.IsLimeDue)
        {
            findings?.Add(FindingCatalog.Create(NutrientCodes.MagnesiumDolomite));
            return new SecondaryOutcome
            {
                Low = ApplicationRate.Zero,
                High = ApplicationRate.Zero,
                IsNeeded = true,
                Test = test,
                Advice = "dolomitic lime brings it",
            };
        }

        if (row.RateLow is not { } low || row.RateHigh is not { } high)
        {
            return new SecondaryOutcome
            {
                IsNeeded = true,
                Test = test,
                Advice = reason,
            };
        }

        var from = ApplicationRate.FromPoundsPerAcre(Pounds(low));
        var to = ApplicationRate.FromPoundsPerAcre(Pounds(high));
        if (row.Nutrient == PlantNutrient.Boron)
        {
            findings?.Add(
                to > ApplicationRate.Zero
                    ? FindingCatalog.Create(NutrientCodes.BoronToxicity, ("rate", Amounts.Print(to.PoundsPerAcre, 4)))
                    : FindingCatalog.Create(NutrientCodes.BoronDiscouraged)
            );
        }

        return new SecondaryOutcome
        {
            Low = from,
            High = to,
            IsNeeded = to > ApplicationRate.Zero,
            Test = test,
            // What the rule says of the rate is not said where its equation comes to none.
            Advice = row.PerTest is not null && to == ApplicationRate.Zero ? null : reason,
            EquationRow = row.PerTest is null ? null : row,
        };

        double Pounds(double constant) =>
            row.PerPh is { } perPh
                ? SecondaryMath.TriStateTrace(constant, row.PerTest ?? 0, test ?? 0, perPh, report.WaterPh!.Value)
            : row.PerTest is { } perTest ? SecondaryMath.KansasZinc(constant, perTest, test ?? 0)
            : Math.Max(0, constant);
    }

    private static SecondaryOutcome Silent() => new();
}

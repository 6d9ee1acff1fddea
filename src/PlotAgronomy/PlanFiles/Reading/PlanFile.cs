using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Blends;
using PlotAgronomy.Liming;
using PlotAgronomy.PlanFiles;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A plan as a file: one way to get a plan. Every mistake is reported at once; nothing is guessed.</summary>
public static class PlanFile
{
    /// <summary>Reads the text of a plan file.</summary>
    /// <param name="json">JSON text; comments and trailing commas are allowed.</param>
    /// <returns>The plan, or all mistakes with line, column and JSON path.</returns>
    public static PlanReadResult Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var root = PlanNodeReader.Read(json, out var notJson);
        if (root is null)
        {
            return new PlanReadResult { Problems = [notJson!] };
        }

        var problems = new List<PlanProblem>();
        PlanShapeCheck.Check(root, PlanShapes.Plan, problems);
        var plan = root.Kind == PlanNodeKind.Object ? Plan(new PlanObject(root, problems), problems) : null;
        return problems.Count == 0
            ? new PlanReadResult
            {
                Plan = plan ?? throw new InvalidOperationException("A plan without a mistake could not be read."),
            }
            : new PlanReadResult { Problems = [.. problems.OrderBy(p => p.Line).ThenBy(p => p.Column)] };
    }

    private static PlotPlan? Plan(PlanObject file, List<PlanProblem> problems)
    {
        var currency = file.Text("currency") is { } code ? file.Try("currency", () => Currency.FromCode(code)) : null;
        var method = file.Choice("method", PlanVocabulary.PlantingMethods);
        var tillage = file.PositiveAmount<Length>("tillageDepth", Amounts.TryReadLength, l => l.Feet);
        double tooDeepInches = PlotPlan.MostTillageInches;
        if (tillage is { } tilled && tilled.Inches >= tooDeepInches - 1e-6)
        {
            file.Report(
                "tillageDepth",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"expected less than {tooDeepInches} in, found '{file.Text("tillageDepth")}'"
                )
            );
        }

        var site = file.Object("plot") is { } plot ? PlotReader.Read(plot) : null;
        var reportPart = file.Object("soilReport");
        var report = reportPart is null ? null : SoilReportReader.Read(reportPart);
        var printed = reportPart is null ? null : PrintedAdviceReader.Read(reportPart);
        var earlier = reportPart is null ? null : Earlier(reportPart);
        var facts = reportPart?.Object("facts");
        var materials = file.Object("materials");
        var limes = materials?.Objects("lime").Select(LimeOfferReader.Read).OfType<Offer<LimingMaterial>>().ToImmutableArray()
            ?? [];
        var fertilizers = materials
            ?.Objects("fertilizers")
            .Select(FertilizerReader.Read)
            .OfType<Offer<FertilizerProduct>>()
            .ToImmutableArray()
            ?? [];
        var lots = materials?.Objects("seedLots").Select(SeedOfferReader.Read).ToList() ?? [];
        var offers = lots.OfType<Offer<SeedLot>>().ToImmutableArray();
        var kinds = file.Object("growing") is { } growing
            ? GrowingReader.Read(growing, offers, offers.Length == lots.Count, site?.IsCarriedOff == true, method)
            : [];
        var bags = materials
            ?.Objects("storeBlends")
            .Select(bag => StoreBlendReader.Read(bag, method))
            .OfType<Offer<StoreBlend>>()
            .ToImmutableArray()
            ?? [];
        var spreader = file.Object("spreader") is { } machine ? SpreaderReader.Read(machine) : null;
        var methods = file.Object("methods");
        if (
            problems.Count > 0
            || currency is null
            || site is null
            || report is null
            || spreader is null
            || kinds.IsEmpty
            || methods?.Chosen("lime", PlanVocabulary.LimeMethods) is not { } limeMethod
            || methods.Chosen("nutrients", PlanVocabulary.NutrientSystems) is not { } system
            || file.Date("plantingDate") is not DateOnly planting
            || method is not PlantingMethod planted
        )
        {
            return null;
        }

        return new PlotPlan
        {
            Currency = currency,
            PlantingDate = planting,
            LimeDate = file.Date("limeDate"),
            TillageDepth = tillage,
            Method = planted,
            Plot = SoilFactsReader.OfPlot(facts, site),
            Report = SoilFactsReader.OfReport(facts, report),
            Printed = printed,
            EarlierLime = earlier,
            LimeMethod = limeMethod,
            NutrientSystem = system,
            BuildUpYears = facts?.Choice("buildUp", PlanVocabulary.BuildUpSpans),
            LegumeCredit = methods.Chosen("legumeCredit", PlanVocabulary.LegumeCredits),
            StatedTargetPh = methods.Number("targetPh"),
            Kinds = kinds,
            LimeOffers = limes,
            FertilizerOffers = fertilizers,
            SeedOffers = offers,
            StoreBlends = bags,
            Spreader = spreader,
        };
    }

    /// <summary>Lime from before the sample, aged from its spreading to the day of sampling.</summary>
    private static EarlierLime? Earlier(PlanObject report)
    {
        if (
            report.Object("earlierLime") is not { } earlier
            || earlier.Amount<ApplicationRate>("rate", Amounts.TryReadRate) is not ApplicationRate rate
            || earlier.Date("spread") is not DateOnly spread
            || report.Date("sampled") is not DateOnly sampled
        )
        {
            return null;
        }

        if (spread > sampled)
        {
            earlier.Report(
                "spread",
                "earlier lime was spread before the sample was taken; lime spread since then belongs to the records"
            );
            return null;
        }

        return earlier.Try("rate", () =>
            EarlierLime.FromRate(rate, (sampled.DayNumber - spread.DayNumber) / ExactUnits.DaysPerMonth)
        );
    }
}

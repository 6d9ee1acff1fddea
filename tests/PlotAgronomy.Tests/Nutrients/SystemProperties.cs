using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Laws every recommendation system keeps, whatever the test, crop and yield.</summary>
[Properties(MaxTest = 1000, EndSize = 5000)]
public class SystemProperties
{
    private static readonly List<(RecommendationSystem System, AcceptedTest Test, Extractant Extractant, CropRow Crop)> InsideTheDomain =
        [.. from system in RecommendationSystem.Everything
            from test in system.Accepts
            from extractant in test.Extractants
            from crop in test.Crops
            select (system, test, extractant, crop)];

    [Property]
    public bool More_nutrient_in_the_soil_never_raises_the_need(NonNegativeInt pick, NonNegativeInt first, NonNegativeInt second, NonNegativeInt yield, bool isCarriedOff)
    {
        var question = InsideTheDomain[pick.Get % InsideTheDomain.Count];
        double low = Math.Min(Test(first), Test(second)), high = Math.Max(Test(first), Test(second));
        return (Ask(question, low, yield, isCarriedOff), Ask(question, high, yield, isCarriedOff)) is not ({ } poor, { } rich)
            || (poor.Rate >= rich.Rate && poor.PublishedLow >= rich.PublishedLow && poor.PublishedHigh >= rich.PublishedHigh);
    }

    [Property]
    public bool The_need_is_finite_never_negative_and_inside_its_published_range(NonNegativeInt pick, NonNegativeInt test, NonNegativeInt yield, bool isCarriedOff) =>
        Ask(InsideTheDomain[pick.Get % InsideTheDomain.Count], Test(test), yield, isCarriedOff) is not { } need
        || (double.IsFinite(need.Rate.PoundsPerAcre) && need.Rate.PoundsPerAcre >= 0 && need.PublishedLow <= need.Rate && need.Rate <= need.PublishedHigh);

    [Property]
    public bool Build_up_and_replacement_add_up_to_the_rate_or_its_cap(NonNegativeInt pick, NonNegativeInt test, NonNegativeInt yield, bool isCarriedOff)
    {
        var question = InsideTheDomain[pick.Get % InsideTheDomain.Count];
        return Ask(question, Test(test), yield, isCarriedOff) is not { BuildUp: { } buildUp, Replacement: { } replacement } need
            || Support.Near.Equal((buildUp + replacement).PoundsPerAcre, need.Rate.PoundsPerAcre)
            || (question.System.Id == "TS-1995" && question.Crop == CropRow.Alfalfa && need.Rate.PoundsPerAcre == 300);
    }

    [Fact]
    public void Inside_its_domain_a_system_answers_and_a_poor_soil_needs_something() =>
        Assert.All(InsideTheDomain.Where(q => q.System.Id != "NE"), q =>
        {
            var need = Ask(q, 2, (NonNegativeInt)NonNegativeInt.NewNonNegativeInt(50), true) ?? Ask(q, 2, (NonNegativeInt)NonNegativeInt.NewNonNegativeInt(50), false);
            Assert.True(need is { Rate.PoundsPerAcre: > 0 }, $"{q.System.Id} {q.Test} {q.Crop}");
        });

    [Property]
    public bool A_browsed_plot_never_needs_more_than_a_harvested_one(NonNegativeInt pick, NonNegativeInt test, NonNegativeInt yield)
    {
        var question = InsideTheDomain[pick.Get % InsideTheDomain.Count];
        return (Ask(question, Test(test), yield, false), Ask(question, Test(test), yield, true)) is not ({ } browsed, { } harvested) || browsed.Rate <= harvested.Rate;
    }

    [Property]
    public bool A_system_never_answers_outside_its_domain(NonNegativeInt pickSystem, NonNegativeInt pickCrop, NonNegativeInt pickExtractant, NonNegativeInt pickUnit, NonNegativeInt test)
    {
        var system = RecommendationSystem.Everything[pickSystem.Get % RecommendationSystem.Everything.Length];
        var crop = Enum.GetValues<CropRow>()[pickCrop.Get % Enum.GetValues<CropRow>().Length];
        var extractant = Enum.GetValues<Extractant>()[pickExtractant.Get % Enum.GetValues<Extractant>().Length];
        SoilTestUnit[] units = [.. Enum.GetValues<SoilTestUnit>().Where(u => ReadingUnits.Misfit(SoilAnalyte.Phosphorus, u) is null)];
        var unit = units[pickUnit.Get % units.Length];
        var report = Report(P(Test(test), unit, extractant), K(Test(test), unit, extractant));
        var answer = system.Recommend(Known(report), CropUse.Browsed(crop, YieldFor(crop, 2)));
        return answer.Needs.Where(n => n.Nutrient != PlantNutrient.Nitrogen).All(n => system.Accepts.Any(t =>
                t.Nutrient == n.Nutrient && t.Crops.Contains(crop) && (t.Extractants.Contains(extractant)
                    || (t.Extractants.Contains(Extractant.Mehlich3) && extractant is Extractant.Mehlich3Icp or Extractant.Mehlich3Colorimetric))))
            && answer.Needs.All(n => answer.Unanswered.All(u => u.Nutrient != n.Nutrient));
    }

    [Property]
    public bool The_order_of_the_report_does_not_matter(NonNegativeInt pick, NonNegativeInt test, NonNegativeInt other, NonNegativeInt yield)
    {
        var (system, accepted, extractant, crop) = InsideTheDomain[pick.Get % InsideTheDomain.Count];
        SoilReading[] readings =
        [
            SoilReading.FromPrinted(accepted.Analyte, Test(test), accepted.Unit, extractant),
            .. Enum.GetValues<Extractant>().Select(e => SoilReading.FromPrinted(accepted.Analyte, Test(other), SoilTestUnit.PartsPerMillion, e)),
        ];
        var use = CropUse.Browsed(crop, YieldFor(crop, yield.Get % 300));
        return system.Recommend(Known(Report(readings)), use).For(accepted.Nutrient)?.Rate == system.Recommend(Known(Report([.. readings.Reverse()])), use).For(accepted.Nutrient)?.Rate;
    }

    [Property]
    public bool The_unit_of_the_reading_does_not_matter(NonNegativeInt pick, NonNegativeInt test, NonNegativeInt yield, bool isCarriedOff)
    {
        var (system, accepted, extractant, crop) = InsideTheDomain[pick.Get % InsideTheDomain.Count];
        if (accepted.Unit is not (SoilTestUnit.PartsPerMillion or SoilTestUnit.PoundsPerAcre or SoilTestUnit.OklahomaIndex))
        {
            return true;
        }

        // lb/ac = 2 x ppm in the furrow slice, exact in binary.
        var ppm = Ask(system, accepted, crop, SoilReading.FromPrinted(accepted.Analyte, Test(test), SoilTestUnit.PartsPerMillion, extractant), yield, isCarriedOff);
        var poundsPerAcre = Ask(system, accepted, crop, SoilReading.FromPrinted(accepted.Analyte, 2 * Test(test), SoilTestUnit.PoundsPerAcre, extractant), yield, isCarriedOff);
        return ppm?.Rate == poundsPerAcre?.Rate && ppm?.Rating?.Name == poundsPerAcre?.Rating?.Name;
    }

    [Property]
    public bool The_same_question_gives_the_same_answer(NonNegativeInt pick, NonNegativeInt test, NonNegativeInt yield, bool isCarriedOff)
    {
        var question = InsideTheDomain[pick.Get % InsideTheDomain.Count];
        return Ask(question, Test(test), yield, isCarriedOff)?.ToString() == Ask(question, Test(test), yield, isCarriedOff)?.ToString();
    }

    [Property(MaxTest = 100, EndSize = 5000)]
    public bool A_side_by_side_spans_from_its_least_to_its_most(NonNegativeInt test, NonNegativeInt yield)
    {
        var report = Report(P(Test(test), SoilTestUnit.PartsPerMillion, Extractant.BrayP1), K(Test(test), SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate));
        var comparison = SystemComparison.For(Known(report), CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(yield.Get % 300)), RecommendationSystem.Everything);
        return comparison.Disagreements.All(d => comparison.Rows.Where(r => r.Need.Nutrient == d.Nutrient)
            .All(r => d.Lowest.Need.Rate <= r.Need.Rate && r.Need.Rate <= d.Highest.Need.Rate));
    }

    private static PlotSoil Known(SoilReport report) => PlotSoil.For(report with
    {
        SampleMoisture = SampleMoisture.FieldMoist,
        PrintedPhosphorusRating = "medium",
    }) with
    {
        SoilClass = SoilClass.Mineral,
        ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9.5),
        PhosphorusSupply = SoilSupply.Medium,
        ExchangeCapacityGroup = SoilSupply.High,
    };

    /// <summary>Half of the draws from 0 to 400, half from 0 to 50, where most limits lie.</summary>
    private static double Test(NonNegativeInt number) => number.Get % 1600 / (number.Get % 2 == 0 ? 4.0 : 32.0);

    private static NutrientNeed? Ask((RecommendationSystem System, AcceptedTest Test, Extractant Extractant, CropRow Crop) question, double test, NonNegativeInt yield, bool isCarriedOff) =>
        Ask(question.System, question.Test, question.Crop, SoilReading.FromPrinted(question.Test.Analyte, test, question.Test.Unit, question.Extractant), yield, isCarriedOff);

    private static NutrientNeed? Ask(RecommendationSystem system, AcceptedTest test, CropRow crop, SoilReading reading, NonNegativeInt yield, bool isCarriedOff)
    {
        var amount = YieldFor(crop, yield.Get % 300);
        var use = isCarriedOff ? CropUse.CarriedOff(crop, amount) : CropUse.Browsed(crop, amount);
        return system.Recommend(Known(Report(reading)), use).For(test.Nutrient);
    }
}

using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>What a whole plot of several kinds needs.</summary>
internal static class PlotNeedSums
{
    internal static void Record(Recorder recorder)
    {
        EveryKind(recorder);
        EverySystem(recorder);
        Requests(recorder);
        Stated(recorder);
    }

    private static KindShare Kind(string id, double share) => KindShare.FromShare(SeedsSums.Kind(id), share);

    private static ImmutableDictionary<string, KindUse> Use(string kind, KindUse use) =>
        ImmutableDictionary<string, KindUse>.Empty.Add(SeedsSums.Kind(kind).Id, use);

    private static SoilReport Indices(params SoilReading[] more) => new()
    {
        Laboratory = "North Carolina",
        SoilClass = SoilClass.Mineral,
        WaterPh = WaterPh.FromValue(6.0),
        Readings =
        [
            SoilSums.Reading(SoilAnalyte.Phosphorus, 25, SoilTestUnit.NorthCarolinaIndex),
            SoilSums.Reading(SoilAnalyte.Potassium, 15, SoilTestUnit.NorthCarolinaIndex), .. more,
        ],
    };

    private static PlotNeedRequest Request(params KindShare[] kinds) => new()
    {
        Soil = Indices(),
        Kinds = [.. kinds],
        System = RecommendationSystem.NorthCarolina,
        SecondaryRules = [],
    };

    private static Dictionary<string, object?> Short(PlotNeed need) => Named(
        ("targets", need.Targets.Select(t => (t.Nutrient, t.AtLeast, t.AtMost))),
        ("computed", need.Computed.Select(t => (t.Nutrient, t.AtLeast, t.AtMost))),
        ("kinds", need.Components.Select(c => (c.Component.Kind.Id, c.Counts, c.PhosphateRow, c.PotashRow, c.Phosphate?.Rate,
            c.Potash?.Rate, c.Nitrogen.Low, c.Nitrogen.High))),
        ("doses", need.NitrogenDoses.Select(d => (d.Low, d.High, d.When))),
        ("Findings", need.Findings));

    private static void EveryKind(Recorder recorder)
    {
        foreach (var kind in KindCatalog.Standard.Kinds)
        {
            recorder.Call($"need of a plot of {kind.Id}", () => Short(PlotNeed.For(Request(KindShare.FromShare(kind, 1)))));
        }
    }

    private static void EverySystem(Recorder recorder)
    {
        foreach (var system in RecommendationSystem.Everything)
        {
            foreach (string kind in new[] { "corn", "winter wheat", "ladino clover", "purple top turnip", "orchardgrass" })
            {
                var readings = system.Accepts
                    .DistinctBy(t => t.Analyte)
                    .Select(t => SoilSums.Reading(t.Analyte, t.Analyte == SoilAnalyte.Potassium ? 70 : 14, t.Unit,
                        t.Extractants[0]));
                recorder.Call($"need of a plot of {kind} by system {system.Id}", () => Short(PlotNeed.For(new PlotNeedRequest
                {
                    Soil = PlotSoil.For(new SoilReport
                    {
                        Laboratory = system.Institution.FullName,
                        WaterPh = WaterPh.FromValue(6.2),
                        SoilClass = SoilClass.Mineral,
                        Readings = [.. readings],
                        SampleMoisture = SampleMoisture.Dried,
                    }) with
                    {
                        ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9),
                        Region = SoilRegion.Piedmont,
                        PhosphorusSupply = SoilSupply.Medium,
                        ExchangeCapacityGroup = SoilSupply.Medium,
                    },
                    Kinds = [Kind(kind, 0.7), Kind("crimson clover", 0.3)],
                    System = system,
                    SecondaryRules = [.. SecondaryRule.Everything],
                    TissueSulfur = Percent(0.2),
                    BuildUpYears = 4,
                })));
            }
        }
    }

    private static void Requests(Recorder recorder)
    {
        recorder.Call("need of a plot, in full",
            () => PlotNeed.For(Request(Kind("oats winter", 0.8), Kind("medium red clover", 0.1))));
        recorder.Call("need of a plot: phosphate",
            () => PlotNeed.For(Request(Kind("oats winter", 0.8))).Find(PlantNutrient.Phosphate));
        recorder.Call("need of a plot: no zinc", () => PlotNeed.For(Request(Kind("oats winter", 0.8))).Find(PlantNutrient.Zinc));
        recorder.Call("need of a plot: no kinds", () => PlotNeed.For(Request()));
        foreach (double share in new[] { 0.1, 0.2, 0.6 })
        {
            recorder.Call($"need of a plot with {share} of clover",
                () => Short(PlotNeed.For(Request(Kind("oats winter", 0.8), Kind("medium red clover", share)))));
        }

        recorder.Call("need of a plot: kinds counted from a half", () => Short(PlotNeed.For(new PlotNeedRequest
        {
            Soil = Indices(),
            Kinds = [Kind("oats winter", 0.7), Kind("medium red clover", 0.4)],
            System = RecommendationSystem.NorthCarolina,
            CountedFromShare = 0.5,
        })));
        recorder.Call("need of a plot: legumes not inoculated", () => Short(PlotNeed.For(new PlotNeedRequest
        {
            Soil = Indices(),
            Kinds = [Kind("cowpea iron clay", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            LegumesAreInoculated = false,
        })));
        foreach (var stand in Enum.GetValues<LegumeStand>())
        {
            recorder.Call($"need of a plot: a legume, {Words(stand)}", () => Short(PlotNeed.For(new PlotNeedRequest
            {
                Soil = Indices(),
                Kinds = [Kind("oats winter", 1), Kind("medium red clover", 0.3)],
                System = RecommendationSystem.NorthCarolina,
                SecondaryRules = [],
                Uses = Use("oats winter", new KindUse { Nitrogen = NitrogenRule.Find("south-carolina-small-grain") }),
                LegumeCredit = LegumeCredit.Find("tennessee-clover-in-grass").For(stand),
            })));
        }

        recorder.Call("need of a plot: hay carried off", () => Short(PlotNeed.For(new PlotNeedRequest
        {
            Soil = PlotSoil.For(Indices(SoilSums.Reading(SoilAnalyte.Phosphorus, 18), SoilSums.Reading(SoilAnalyte.Potassium, 100))) with
            {
                ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(12),
            },
            Kinds = [Kind("ladino clover", 1)],
            System = RecommendationSystem.Find("TS-2020"),
            SecondaryRules = [],
            Uses = Use("ladino clover",
                new KindUse { TakenAs = CropRow.Alfalfa, IsCarriedOff = true, Yield = CropYield.FromTonsPerAcre(4) }),
        })));
        recorder.Call("need of a plot: grazed", () => Short(PlotNeed.For(new PlotNeedRequest
        {
            Soil = PlotSoil.For(Indices(SoilSums.Reading(SoilAnalyte.Phosphorus, 32), SoilSums.Reading(SoilAnalyte.Potassium, 140))) with
            {
                ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(12),
            },
            Kinds = [Kind("alfalfa", 1)],
            System = RecommendationSystem.Find("TS-2020"),
            SecondaryRules = [],
            Uses = Use("alfalfa", new KindUse
            {
                Yield = CropYield.FromTonsPerAcre(4),
                Removal = CropRemoval.Grazed(RemovalFigure.Find("kentucky-alfalfa-hay"), CropYield.FromTonsPerAcre(4),
                    RetainedShare.Find("cattle")),
            }),
        })));
        recorder.Call("need of a plot: printed beside ours", () => Short(PlotNeed.For(new PlotNeedRequest
        {
            Soil = Indices(),
            Kinds = [Kind("oats winter", 1)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [],
            Printed = PrintedRecommendation.FromRates("a laboratory", "clover", PrintedRate.FromRate(PlantNutrient.Potash, PerAcre(100))),
        })));
        recorder.Call("need of a plot: overridden", () => Short(PlotNeed.For(new PlotNeedRequest
        {
            Soil = Indices(SoilSums.Reading(SoilAnalyte.Boron, 0.2, extractant: Extractant.HotWater)),
            Kinds = [Kind("alfalfa", 0.6), Kind("oats winter", 0.4)],
            System = RecommendationSystem.NorthCarolina,
            SecondaryRules = [SecondaryRule.Find("tennessee-boron-alfalfa"), SecondaryRule.Find("plot-boron")],
            Overrides = [NutrientTarget.Create(PlantNutrient.Nitrogen, PerAcre(50), PerAcre(60), "asked for")],
        })));
    }

    private static void Stated(Recorder recorder)
    {
        recorder.Call("a stated need", () => PlotNeed.Stated(
            NutrientTarget.Create(PlantNutrient.Potash, PerAcre(60), null, "mine"),
                NutrientTarget.Create(PlantNutrient.Nitrogen, PerAcre(30), PerAcre(40), "mine")));
        recorder.Call("a stated need of nothing", () => PlotNeed.Stated());
    }
}

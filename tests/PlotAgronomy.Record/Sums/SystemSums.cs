using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Every recommendation system over its crop rows, and every rating scale over its classes.</summary>
internal static class SystemSums
{
    private static PlotSoil Full(SoilReport report) => PlotSoil.For(report with
    {
        SampleMoisture = SampleMoisture.Dried,
        PrintedPhosphorusRating = "low",
        SubsoilPotassium = SoilSums.Reading(SoilAnalyte.Potassium, 90, extractant: Extractant.Mehlich1),
    }) with
    {
        SoilClass = SoilClass.Mineral,
        Region = SoilRegion.Piedmont,
        ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(8),
        PhosphorusSupply = SoilSupply.Medium,
        ExchangeCapacityGroup = SoilSupply.Medium,
    };

    private static PlotSoil Other(SoilReport report) => PlotSoil.For(report with
    {
        SampleMoisture = SampleMoisture.FieldMoist,
        PrintedPhosphorusRating = "high",
    }) with
    {
        SoilClass = SoilClass.MineralOrganic,
        Region = SoilRegion.CoastalPlain,
        ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(20),
        PhosphorusSupply = SoilSupply.Low,
        ExchangeCapacityGroup = SoilSupply.High,
    };

    private static readonly (string Words, Func<SoilReport, PlotSoil> Soil, int Years)[] Places =
        [("", Full, 4), (", another place", Other, 1)];

    internal static void Record(Recorder recorder)
    {
        foreach (var system in RecommendationSystem.Everything)
        {
            recorder.Add($"system {system.Id}", "", RecommendationSystem.Find(system.Id));
            recorder.Call($"system {system.Id}: rows", () => (
                from row in Enum.GetValues<CropRow>()
                from nutrient in new[] { PlantNutrient.Phosphate, PlantNutrient.Potash }
                where system.Has(row, nutrient)
                select $"{row}-{nutrient}").ToArray());
            foreach (var test in system.Accepts)
            {
                foreach (var crop in test.Crops)
                {
                    Grid(recorder, system, test, crop);
                }
            }

            Odd(recorder, system);
        }

        Ratings(recorder);
        Comparisons(recorder);
        Everyday(recorder);
    }

    internal static CropYield YieldOf(CropRow row, double bushels = 120, double tons = 3.5) =>
        row is CropRow.Corn or CropRow.Soybean or CropRow.Wheat or CropRow.Oat
            or CropRow.SmallGrain or CropRow.GrainSorghum or CropRow.CornAndSoybean
            ? CropYield.FromBushelsPerAcre(bushels)
            : CropYield.FromTonsPerAcre(tons);

    private static CropUse FourYears(CropUse use) => use with { BuildUpYears = 4 };

    private static SoilReport Report(params SoilReading[] readings) =>
        new()
        {
            Laboratory = "a laboratory",
            Readings = [.. readings],
            WaterPh = WaterPh.FromValue(6.2),
            SoilClass = SoilClass.Mineral,
            Texture = SoilTexture.SandyLoam
        };

    private static double[] ValuesOf(SoilTestUnit unit, SoilAnalyte analyte)
    {
        double full = analyte == SoilAnalyte.Potassium ? 4 : 1;
        return unit is SoilTestUnit.PoundsPerAcre ? [10 * full, 30 * full, 60 * full, 110 * full, 260 * full]
            : unit is SoilTestUnit.PartsPerMillion or SoilTestUnit.MilligramsPerCubicDecimeter ? [4 * full, 12 * full, 22 * full,
                38 * full, 90 * full]
            : [8, 25, 47, 75, 130];
    }

    private static void Grid(Recorder recorder, RecommendationSystem system, AcceptedTest test, CropRow crop)
    {
        foreach (double value in ValuesOf(test.Unit, test.Analyte))
        {
            var report = Report(SoilSums.Reading(test.Analyte, value, test.Unit, test.Extractants[0]));
            foreach (var (place, soil, years) in Places)
            {
                string name = $"system {system.Id}: {Words(test.Nutrient)} for {Words(crop)} "
                    + $"at {value} {Words(test.Unit)} by {Words(test.Extractants[0])}{place}";
                recorder.Call($"{name}, browsed",
                    () => Short(system.Recommend(soil(report), CropUse.Browsed(crop) with { BuildUpYears = years }), test.Nutrient));
                recorder.Call($"{name}, carried off",
                    () => Short(system.Recommend(soil(report),
                        CropUse.CarriedOff(crop, YieldOf(crop)) with { BuildUpYears = years }), test.Nutrient));
            }
        }

        var middle = Report(test.Extractants.Select(by => SoilSums.Reading(test.Analyte, ValuesOf(test.Unit, test.Analyte)[2],
            test.Unit, by)).ToArray()[^1..]);
        string by = $"system {system.Id}: {Words(test.Nutrient)} for {Words(crop)} "
            + $"in {Words(test.Unit)} by {Words(test.Extractants[^1])}";
        recorder.Call($"{by}, a yield but browsed",
            () => Short(system.Recommend(Full(middle), FourYears(CropUse.Browsed(crop, YieldOf(crop, 60, 2)))), test.Nutrient));
        recorder.Call($"{by}, removal stated",
            () =>
                Short(system.Recommend(Full(middle),
                    FourYears(CropUse.CarriedOff(crop, YieldOf(crop, 60, 2), PerAcre(31), PerAcre(88)))),
                    test.Nutrient));
        recorder.Call($"{by}, nothing known of the place",
            () => Short(system.Recommend(middle, CropUse.Browsed(crop)), test.Nutrient));
    }

    private static void Odd(Recorder recorder, RecommendationSystem system)
    {
        var test = system.Accepts[0];
        var report = Report(
            SoilSums.Reading(SoilAnalyte.Phosphorus, 20, test.Unit, test.Extractants[0]),
            SoilSums.Reading(SoilAnalyte.Potassium, 60, test.Unit, test.Extractants[0]));
        recorder.Call($"system {system.Id}: a recommendation in full",
            () => system.Recommend(Full(report), FourYears(CropUse.CarriedOff(test.Crops[0], YieldOf(test.Crops[0])))));
        recorder.Call($"system {system.Id}: a report without readings",
            () => Short(system.Recommend(Full(Report()), FourYears(CropUse.Browsed(test.Crops[0]))), test.Nutrient));
        recorder.Call($"system {system.Id}: another extractant", () =>
            Short(system.Recommend(Full(Report(SoilSums.Reading(test.Analyte, 20, extractant: Extractant.Lancaster))),
                FourYears(CropUse.Browsed(test.Crops[0]))), test.Nutrient));
        foreach (var row in Enum.GetValues<CropRow>().Where(r => !system.Has(r, test.Nutrient)))
        {
            recorder.Call($"system {system.Id}: {Words(row)}, which it has no row for",
                () =>
                    system.Recommend(Full(report), FourYears(CropUse.Browsed(row))).Unanswered.Select(u => (u.Nutrient, u.Finding.Code)));
        }
    }

    private static Dictionary<string, object?> Short(NutrientRecommendation answer, PlantNutrient nutrient)
    {
        var need = answer.For(nutrient);
        var unanswered = answer.Unanswered.FirstOrDefault(u => u.Nutrient == nutrient);
        return Named(
            ("rate", need?.Rate),
            ("low", need?.PublishedLow),
            ("high", need?.PublishedHigh),
            ("printed", need?.AsPrinted),
            ("build-up", need?.BuildUp),
            ("replacement", need?.Replacement),
            ("legal maximum", need?.IsLegalMaximum),
            ("class", (need?.Rating ?? unanswered?.Rating)?.Name),
            ("unanswered", unanswered?.Finding.Code),
            ("Findings", answer.Findings));
    }

    private static void Ratings(Recorder recorder)
    {
        foreach (var system in RatingSystem.All.AddRange(RatingSystem.Unchecked))
        {
            recorder.Add($"rating system {system.Id}", "", RatingSystem.Find(system.Id));
            foreach (var scale in system.Scales)
            {
                Scale(recorder, system, scale);
            }
        }
    }

    private static void Scale(Recorder recorder, RatingSystem system, RatingScale scale)
    {
        foreach (var one in scale.Classes)
        {
            recorder.Add($"rating scale {scale.Id}, class {one.Order}", "", one);
            recorder.Add($"rating scale {scale.Id}, class {one.Order}", "limits", one.LimitsInWords());
        }

        double[] values = [.. scale.Classes.SelectMany(c => new[] { c.PrintedLow,
            c.PrintedHigh is { } high ? (c.PrintedLow + high) / 2 : c.PrintedLow * 1.5 + 1 }).Distinct()];
        var extractant = scale.Extractants.IsEmpty ? Extractant.NotStated : scale.Extractants[0];
        CropRow? crop = scale.Crops.IsEmpty ? null : scale.Crops[0];
        foreach (double value in values)
        {
            var report = Report(SoilSums.Reading(scale.Analyte, value, scale.Unit ?? SoilTestUnit.PartsPerMillion, extractant));
            foreach (var (place, soil, years) in Places)
            {
                recorder.Call($"rating scale {scale.Id} at {value}{place}",
                    () => Short(system.Rate(soil(report), crop), scale.Analyte));
            }

            recorder.Call($"rating scale {scale.Id} at {value}, no crop and no place",
                () => Short(system.Rate(report), scale.Analyte));
        }
    }

    private static Dictionary<string, object?> Short(SoilRatings ratings, SoilAnalyte analyte)
    {
        var rating = ratings.For(analyte);
        return Named(
            ("class", rating?.Name),
            ("scale", rating?.Scale.Id),
            ("compared", rating?.ComparedValue),
            ("status", rating?.Status),
            ("unrated", ratings.Unrated.Select(u => u.Analyte)),
            ("Findings", ratings.Findings));
    }

    private static void Comparisons(Recorder recorder)
    {
        var report = Report(
            SoilSums.Reading(SoilAnalyte.Phosphorus, 18),
            SoilSums.Reading(SoilAnalyte.Potassium, 95),
            SoilSums.Reading(SoilAnalyte.Phosphorus, 14, extractant: Extractant.BrayP1),
            SoilSums.Reading(SoilAnalyte.Potassium, 90, extractant: Extractant.AmmoniumAcetate),
            SoilSums.Reading(SoilAnalyte.Phosphorus, 9, extractant: Extractant.Olsen));
        foreach (var row in Enum.GetValues<CropRow>())
        {
            recorder.Call($"systems side by side for {Words(row)}",
                () => Short(SystemComparison.For(Full(report), FourYears(CropUse.CarriedOff(row, YieldOf(row))))));
            recorder.Call($"systems side by side for {Words(row)}, all asked by name",
                () => Short(SystemComparison.For(Full(report), FourYears(CropUse.Browsed(row)), RecommendationSystem.Everything)));
        }

        recorder.Call("systems side by side, a row each",
            () =>
                Short(SystemComparison.For(Full(report), system =>
                    system.Accepts[0].Crops[0] is var row && system.Id != "NI" ? FourYears(CropUse.Browsed(row)) : null)));
        recorder.Call("systems at odds about phosphate",
            () =>
                SystemComparison.For(Full(report),
                    FourYears(CropUse.Browsed(CropRow.Corn, CropYield.FromBushelsPerAcre(120)))).About(PlantNutrient.Phosphate)?.Difference);
    }

    private static Dictionary<string, object?> Short(SystemComparison comparison) => Named(
        ("rows", comparison.Rows.Select(r => (r.System.Id, r.Crop, r.Need.Nutrient, r.Need.Rate))),
        ("left out", comparison.LeftOut.Select(r => r.System.Id)),
        ("at odds", comparison.Disagreements.Select(d => (d.Nutrient, d.Lowest.System.Id, d.Highest.System.Id, d.Difference))),
        ("Findings", comparison.Findings));

    private static void Everyday(Recorder recorder)
    {
        recorder.Call("systems in daily use", () => new[]
        {
            RecommendationSystem.Find("IL"), RecommendationSystem.Find("IA-2013"), RecommendationSystem.Kansas,
            RecommendationSystem.Find("MO"), RecommendationSystem.Find("MT"),
            RecommendationSystem.Find("NE"), RecommendationSystem.Find("NE-OLD"), RecommendationSystem.NorthCarolina,
            RecommendationSystem.Find("ND-2017"),
            RecommendationSystem.Find("NI"), RecommendationSystem.Oklahoma, RecommendationSystem.Find("SC"),
            RecommendationSystem.Find("SD"),
            RecommendationSystem.TriState1995, RecommendationSystem.Find("TS-2020"),
        }.Select(s => s.Id).ToArray());
        recorder.Call("rating systems in daily use",
            () =>
                new[] { RatingSystem.Delaware, RatingSystem.NewJersey, RatingSystem.NorthCarolina,
                    RatingSystem.Salinity }.Select(s => s.Id).ToArray());
        recorder.Call("systems: one that is not there", () => RecommendationSystem.Find("none"));
        recorder.Call("rating systems: one that is not there", () => RatingSystem.Find("none"));
    }
}

using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Crop rows, nitrogen, credits, removal and the secondary nutrients; systems and plots have their own files.</summary>
internal static class NutrientsSums
{
    internal static void Record(Recorder recorder)
    {
        SystemSums.Record(recorder);
        PlotNeedSums.Record(recorder);
        Crops(recorder);
        Nitrogen(recorder);
        Credits(recorder);
        Removal(recorder);
        Secondary(recorder);
        Manganese(recorder);
        Rates(recorder);
    }

    private static void Crops(Recorder recorder)
    {
        foreach (var row in Enum.GetValues<CropRow>())
        {
            recorder.Call($"nutrients: the words for {Words(row)}", () => CropRows.WordsFor(row));
            recorder.Call($"nutrients: {Words(row)} found by its words",
                () => CropRows.TryFind(CropRows.WordsFor(row), out var found, out _) ? found : null);
        }

        recorder.Call("nutrients: a row that is not there", () => CropRows.TryFind("moss", out var found, out _) ? found : null);
        recorder.Call("nutrients: a crop browsed", () => CropUse.Browsed(CropRow.Clover, CropYield.FromTonsPerAcre(2)));
        recorder.Call("nutrients: a crop carried off", () => CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(120)));
        recorder.Call("nutrients: a crop carried off, removal stated",
            () => CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(120), PerAcre(42), PerAcre(30)));
        recorder.Call("nutrients: yields alike",
            () =>
                new[] { CropYield.FromTonsPerAcre(2) == CropYield.FromTonsPerAcre(2),
                    CropYield.FromTonsPerAcre(2) != CropYield.FromBushelsPerAcre(2) });
        foreach (var kind in KindCatalog.Standard.Kinds)
        {
            recorder.Call($"kind {kind.Id}: taken as", () => KindProxy.For(kind));
            recorder.Call($"kind {kind.Id}: rows that are its own",
                () => Enum.GetValues<CropRow>().Where(KindProxy.For(kind).IsOwn).ToArray());
            recorder.Call($"kind {kind.Id}: row in every system", () => RecommendationSystem.Everything.ToDictionary(
                s => s.Id, s => (KindProxy.For(kind).RowIn(s, PlantNutrient.Phosphate),
                    KindProxy.For(kind).RowIn(s, PlantNutrient.Potash))));
            recorder.Call($"kind {kind.Id}: secondary rules",
                () => SecondaryRule.Everything.Where(r => r.IsFor(kind)).Select(r => r.Id).ToArray());
        }
    }

    private static void Nitrogen(Recorder recorder)
    {
        foreach (var rule in NitrogenRule.All.AddRange(NitrogenRule.Unchecked))
        {
            recorder.Add($"nitrogen rule {rule.Id}", "", NitrogenRule.Find(rule.Id));
            recorder.Call($"nitrogen rule {rule.Id}: no yield", () => rule.Answer());
            recorder.Call($"nitrogen rule {rule.Id}: less a credit", () => rule.Answer(null, PerAcre(25)));
            foreach (double yield in rule.YieldUnit == YieldUnit.Ton ? new[] { 1.0, 3, 6.5 } : [40.0, 110, 190])
            {
                var amount = rule.YieldUnit == YieldUnit.Ton
                    ? CropYield.FromTonsPerAcre(yield)
                    : CropYield.FromBushelsPerAcre(yield);
                recorder.Call($"nitrogen rule {rule.Id}: a yield of {yield}", () => rule.Answer(amount));
                recorder.Call($"nitrogen rule {rule.Id}: a yield of {yield}, less a credit",
                    () => rule.Answer(amount, PerAcre(25)));
            }
        }

        recorder.Call("nitrogen rule: one that is not there", () => NitrogenRule.Find("none"));
    }

    private static void Credits(Recorder recorder)
    {
        foreach (var credit in LegumeCredit.Everything)
        {
            recorder.Add($"legume credit {credit.Id}", "", LegumeCredit.Find(credit.Id));
            foreach (var stand in Enum.GetValues<LegumeStand>())
            {
                recorder.Call($"legume credit {credit.Id}: {Words(stand)}", () => credit.For(stand));
            }
        }
    }

    private static void Removal(Recorder recorder)
    {
        foreach (var kept in RetainedShare.All.AddRange(RetainedShare.Unchecked))
        {
            recorder.Add($"share kept by {kept.Id}", "", RetainedShare.Find(kept.Id));
        }

        foreach (var figure in RemovalFigure.All.AddRange(RemovalFigure.Unchecked))
        {
            recorder.Add($"removal {figure.Id}", "", RemovalFigure.Find(figure.Id));
            var yield = figure.Unit == YieldUnit.Ton ? CropYield.FromTonsPerAcre(3.5) : CropYield.FromBushelsPerAcre(120);
            recorder.Call($"removal {figure.Id}: all carried off", () => CropRemoval.CarriedOff(figure, yield));
            recorder.Call($"removal {figure.Id}: 40 percent carried off",
                () => CropRemoval.CarriedOff(figure, yield, Percent(40)));
            recorder.Call($"removal {figure.Id}: potash",
                () => CropRemoval.CarriedOff(figure, yield).Find(PlantNutrient.Potash)?.High);
            foreach (var kept in RetainedShare.All.AddRange(RetainedShare.Unchecked))
            {
                recorder.Call($"removal {figure.Id}: grazed by {kept.Id}", () => CropRemoval.Grazed(figure, yield, kept));
            }
        }

        recorder.Call("removal of a browsed plot", () => CropRemoval.Browsed);
        recorder.Call("removal of a browsed plot: potash", () => CropRemoval.Browsed.Find(PlantNutrient.Potash));
    }

    private static void Secondary(Recorder recorder)
    {
        foreach (var rule in SecondaryRule.Everything)
        {
            recorder.Add($"secondary rule {rule.Id}", "", SecondaryRule.Find(rule.Id));
            recorder.Call($"secondary rule {rule.Id}: no test", () => rule.Answer(Report(6.2)));
            if (!Enum.TryParse<SoilAnalyte>(rule.Nutrient.ToString(), out var analyte))
            {
                continue;
            }

            foreach (var (unit, values) in new[] { (SoilTestUnit.PartsPerMillion, new[] { 0.2, 0.8, 4, 30 }),
                (SoilTestUnit.PoundsPerAcre, [0.2, 2, 9, 60]), (SoilTestUnit.NorthCarolinaIndex, [8.0, 20, 40]) })
            {
                foreach (double value in values)
                {
                    foreach (var extractant in new[] { Extractant.Mehlich3, Extractant.Dtpa, Extractant.HydrochloricAcid,
                        Extractant.HotWater })
                    {
                        foreach (double ph in new[] { 5.6, 6.9 })
                        {
                            recorder.Call(
                                $"secondary rule {rule.Id}: {value} {Words(unit)} by {Words(extractant)} at pH {ph}",
                                () =>
                                    Short(rule.Answer(Mineral(Report(ph, SoilSums.Reading(analyte, value, unit, extractant))), isLimeDue: true, Percent(0.2), Percent(6))));
                        }
                    }
                }
            }
        }

        recorder.Call("sulfur set free by organic matter", () => SecondaryRule.SulfurReleased(Percent(3)));
        recorder.Call("sulfur set free by organic matter of a thin layer",
            () => SecondaryRule.SulfurReleased(Percent(3), SampledLayer.FromDepth(Inches(4))));
        recorder.Call("phosphate in a band", () => NutrientNeed.BandedPhosphateFor(PerAcre(60)));
    }

    private static PlotSoil Mineral(SoilReport report) => PlotSoil.For(report) with { SoilClass = SoilClass.Mineral };

    private static SoilReport Report(double ph, params SoilReading[] readings) => new()
    {
        Laboratory = "a laboratory",
        WaterPh = WaterPh.FromValue(ph),
        Readings = [.. readings],
        OrganicMatter = Percent(2),
        Texture = SoilTexture.LoamySand,
    };

    private static Dictionary<string, object?> Short(SecondaryAnswer answer) =>
        Named(("low", answer.Low), ("high", answer.High), ("needed", answer.IsNeeded), ("Findings", answer.Findings));

    private static void Manganese(Recorder recorder)
    {
        foreach (double ph in new[] { 5.4, 6.2, 7.1 })
        {
            foreach (double value in new[] { 4.0, 20, 60 })
            {
                recorder.Call($"manganese {value} ppm at pH {ph}",
                    () => ManganeseAvailability.NewJersey(SoilSums.Reading(SoilAnalyte.Manganese, value), WaterPh.FromValue(ph)));
                var index = SoilSums.Reading(SoilAnalyte.Manganese, value, SoilTestUnit.NorthCarolinaIndex);
                recorder.Call($"manganese index {value} at pH {ph}, equation A",
                    () => ManganeseAvailability.NorthCarolinaA(index, WaterPh.FromValue(ph)));
                recorder.Call($"manganese index {value} at pH {ph}, equation B",
                    () => ManganeseAvailability.NorthCarolinaB(index, WaterPh.FromValue(ph)));
            }
        }
    }

    private static void Rates(Recorder recorder)
    {
        recorder.Call("printed rate", () => PrintedRate.FromRate(PlantNutrient.Nitrogen, PerAcre(30), PerAcre(40)));
        recorder.Call("printed rate of one figure", () => PrintedRate.FromRate(PlantNutrient.Nitrogen, PerAcre(30)));
        foreach (var nutrient in Enum.GetValues<PlantNutrient>())
        {
            recorder.Call($"printed rate of the element, {Words(nutrient)}", () => PrintedRate.FromElement(nutrient, PerAcre(30)));
        }

        var printed = PrintedRecommendation.FromRates("a laboratory", "clover", PrintedRate.FromRate(PlantNutrient.Potash, PerAcre(100)),
            PrintedRate.FromElement(PlantNutrient.Phosphate, PerAcre(20)));
        recorder.Call("printed recommendation", () => printed);
        recorder.Call("printed recommendation: potash", () => printed.Find(PlantNutrient.Potash));
        recorder.Call("printed recommendation: none for zinc", () => printed.Find(PlantNutrient.Zinc));
        recorder.Call("target", () => NutrientTarget.Create(PlantNutrient.Zinc, PerAcre(2.5), PerAcre(3.5), "asked for"));
        recorder.Call("target with its limits crossed",
            () => NutrientTarget.Create(PlantNutrient.Zinc, PerAcre(2.5), PerAcre(1), "asked for"));
    }
}

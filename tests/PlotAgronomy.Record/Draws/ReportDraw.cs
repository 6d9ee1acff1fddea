using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws the laboratory's report: mostly with the readings that the chosen systems ask for.</summary>
internal static class ReportDraw
{
    private const double Misfit = 0.1;

    internal static JsonObject Of(Draw draw, LimeRecipe lime, NutrientRecipe nutrients, DateOnly sampled)
    {
        var report = new JsonObject
        {
            ["laboratory"] = draw.Pick("a regional laboratory", "the state's own laboratory"),
            ["sampled"] = Draw.Day(sampled),
            ["depth"] = draw.Pick("6 in", "6 in", "8 in", "7 in", "6.67 in", "4 in", "15 cm"),
        };
        bool organic = lime.IsForOrganicSoil ? !draw.Chance(Misfit) : draw.Chance(0.05);
        draw.Maybe(organic ? 1 : 0.8, report, "soilClass", () =>
            organic ? "organic" : draw.Pick("mineral", "mineral", "mineral", "mineral-organic"));
        report["waterPh"] = lime.Reading == LimeReadingWord.WaterPh ? draw.Number(lime.Low, lime.High)
            : draw.Chance(0.05) ? draw.Number(6.6, 7.8) : draw.Number(4.6, lime.HighestWaterPh);
        bool fits = !draw.Chance(Misfit);
        AddLimeReading(draw, report, lime, fits);
        draw.Maybe(0.6, report, "cec", () => Charge(draw, 2, 28, draw.Pick("meq/100 g", "meq/100 cm3")));
        draw.Maybe(0.6, report, "organicMatter", () => organic ? draw.Percent(20, 60) : draw.Percent(0.6, 6));
        draw.Maybe(0.3, report, "humicMatter", () => draw.Percent(0.1, 3));
        draw.Maybe(0.3, report, "weightPerVolume", () => draw.Amount(organic ? 0.4 : 0.8, organic ? 0.8 : 1.5, 2, "g/cm3"));
        report["readings"] = Readings(draw, lime, nutrients, fits);
        draw.Maybe(0.7, report, "facts", () => Facts(draw));
        draw.Maybe(0.3, report, "recommendation", () => Recommendation(draw));
        draw.Maybe(0.15, report, "earlierLime", () => new JsonObject
        {
            ["rate"] = draw.Pick(draw.Amount(0.3, 2, 2, "ton/ac"), draw.Amount(20, 90, 0, "lb/1000 ft2")),
            ["spread"] = Draw.Day(sampled.AddDays(-draw.Whole(0, 400))),
        });
        return report;
    }

    private static void AddLimeReading(Draw draw, JsonObject report, LimeRecipe lime, bool fits)
    {
        if (lime.Reading == LimeReadingWord.Buffer || !fits)
        {
            draw.Maybe(fits ? 1 : 0.6, report, "buffer", () => new JsonObject
            {
                ["name"] = fits ? draw.Pick(lime.Buffers) : draw.Pick(ReportWords.Buffers),
                ["ph"] = fits ? draw.Number(lime.Low, lime.High, draw.Whole(1, 2)) : draw.Number(4.5, 8),
            });
        }

        if (lime.Reading is LimeReadingWord.AcidityByWeight or LimeReadingWord.AcidityByVolume || draw.Chance(0.08))
        {
            bool byWeight = lime.Reading == LimeReadingWord.AcidityByWeight;
            report["exchangeableAcidity"] = Charge(draw,
                Math.Max(0.3, lime.Reading == LimeReadingWord.Buffer ? 0 : lime.Low), Math.Min(14, Math.Max(2, lime.High)),
                byWeight == fits ? "meq/100 g" : "meq/100 cm3");
        }
    }

    private static JsonObject Charge(Draw draw, double from, double to, string unit) =>
        new() { ["value"] = draw.Number(from, to), ["unit"] = unit };

    private static JsonArray Readings(Draw draw, LimeRecipe lime, NutrientRecipe nutrients, bool fits)
    {
        var readings = new JsonArray();
        void Add(string analyte, double high, string unit, string extractant) => readings.Add(new JsonObject
        {
            ["analyte"] = analyte,
            ["value"] = draw.Number(high * 0.05, high, high < 5 ? 2 : 1),
            ["unit"] = unit,
            ["extractant"] = extractant,
        });

        if (draw.Chance(0.97))
        {
            Add("P", nutrients.PhosphorusHigh, nutrients.Unit,
                fits ? draw.Pick(nutrients.Phosphorus) : draw.Pick(ReportWords.Extractants));
        }

        if (draw.Chance(0.93))
        {
            string unit = nutrients.System == "NI" ? "ppm" : nutrients.Unit;
            Add("K", nutrients.PotassiumHigh, unit, fits ? draw.Pick(nutrients.Potassium) : draw.Pick(ReportWords.Extractants));
        }

        if (lime.Reading == LimeReadingWord.Aluminum && fits)
        {
            Add("Al", lime.High, "ppm", "modified Morgan");
        }

        var others = ReportWords.OtherReadings
            .Where(o => !(o.Analyte == "Al" && lime.Reading == LimeReadingWord.Aluminum)).ToList();
        foreach (var (analyte, extractants, unit, high) in draw.Several(others, draw.Whole(0, 5)))
        {
            Add(analyte, high, unit, draw.Pick(extractants));
        }

        return readings;
    }

    private static JsonObject Facts(Draw draw)
    {
        var facts = new JsonObject();
        draw.Maybe(0.7, facts, "region", () => draw.Pick("coastal plain", "piedmont"));
        draw.Maybe(0.7, facts, "sampleState", () => draw.Pick("field-moist", "dried"));
        draw.Maybe(0.7, facts, "phosphorusSupply", () => draw.Pick("low", "medium", "high"));
        draw.Maybe(0.7, facts, "exchangeCapacityGroup", () => draw.Pick("low", "high"));
        draw.Maybe(0.7, facts, "phosphorusRating", () => draw.Pick("low", "medium", "sufficient", "high", "excessive"));
        draw.Maybe(0.7, facts, "buildUp", () => draw.Pick("4 years", "8 years"));
        return facts;
    }

    private static JsonObject Recommendation(Draw draw)
    {
        var printed = new JsonObject { ["crop"] = draw.Pick("wildlife plot", "clover plot", "small grain") };
        draw.Maybe(0.55, printed, "lime", () => PrintedLime(draw));
        draw.Maybe(0.6, printed, "nitrogen", () =>
            draw.Pick(draw.Amount(0, 100, 0, "lb/ac"), draw.Amount(0.5, 2, 1, "lb/1000 ft2")));
        draw.Maybe(0.7, printed, "phosphate", () => draw.Pick(draw.Amount(0, 120, 0, "lb/ac"), draw.Amount(0, 120, 0, "kg/ha")));
        draw.Maybe(0.7, printed, "potash", () =>
            draw.Pick(draw.Amount(0, 160, 0, "lb/ac"), draw.Amount(0.5, 3, 1, "lb/1000 ft2")));
        return printed;
    }

    private static JsonObject PrintedLime(Draw draw)
    {
        string basis = draw.Pick(ReportWords.PrintedBases);
        var lime = new JsonObject
        {
            ["rate"] = draw.Pick(
                draw.Amount(0, 4, 1, "ton/ac"), draw.Amount(500, 6000, 0, "lb/ac"), draw.Amount(20, 140, 0, "lb/1000 ft2")),
            ["basis"] = basis,
            ["targetPh"] = draw.Pick(6.0, 6.5, 6.5, 6.8, 7.0),
            ["depth"] = draw.Pick("6 in", "8 in", "7 in", "15 cm"),
        };
        draw.Maybe(0.6, lime, "institution", () => draw.Pick(ReportWords.Institutions));
        return lime;
    }
}

using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws what an owner knows of place, frost and weeds.</summary>
internal static class SeasonDraw
{
    internal static JsonObject Of(Draw draw, DateOnly planting)
    {
        var season = new JsonObject();
        draw.Maybe(0.6, season, "where", () =>
            new JsonArray(draw.Number(31, 47, 2), draw.Number(-98, -72, 2)));
        draw.Maybe(0.6, season, "firstFreeze", () => FirstFreeze(draw));
        draw.Maybe(0.6, season, "weeds", () => Weeds(draw, planting));
        return season;
    }

    private static JsonObject FirstFreeze(Draw draw)
    {
        var early = new DateOnly(2026, 9, 10).AddDays(draw.Whole(0, 50));
        var middle = early.AddDays(draw.Whole(5, 20));
        var freeze = new JsonObject();
        draw.Maybe(0.3, freeze, "degreesF", () => draw.Pick(28, 32, 36));
        freeze["oneYearInTen"] = Draw.Day(early);
        freeze["halfOfYears"] = Draw.Day(middle);
        freeze["nineYearsInTen"] = Draw.Day(middle.AddDays(draw.Whole(5, 20)));
        return freeze;
    }

    private static JsonObject Weeds(Draw draw, DateOnly planting)
    {
        string way = draw.Pick("repeated-tillage", "smother-crop", "herbicide", "own-way");
        var weeds = new JsonObject { ["way"] = way };
        switch (way)
        {
            case "smother-crop":
                draw.Maybe(0.8, weeds, "smotherKind", () => draw.Pick("buckwheat", "cowpea"));
                draw.Maybe(0.7, weeds, "smotherSown", () => Draw.Day(planting.AddDays(-draw.Whole(40, 90))));
                break;
            case "herbicide":
                draw.Maybe(0.7, weeds, "labelDays", () => draw.Whole(0, 60));
                break;
            case "own-way":
                weeds["words"] = "Under clear sheet for six weeks";
                break;
        }

        return weeds;
    }
}

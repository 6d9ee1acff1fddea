using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws the spreader and its weighed runs.</summary>
internal static class SpreaderDraw
{
    internal static JsonObject Of(Draw draw, List<KindWord> kinds)
    {
        var spreader = new JsonObject
        {
            ["name"] = draw.Pick("shoulder spreader", "hand-cranked spreader", "pull-behind spreader"),
            ["swath"] = draw.Pick(draw.Amount(6, 24, 0, "ft"), draw.Amount(2, 8, 1, "m")),
        };
        draw.Maybe(0.6, spreader, "hopper", () => draw.Pick(draw.Amount(1, 12, 1, "gal"), draw.Amount(0.2, 2, 1, "bu")));
        draw.Maybe(0.75, spreader, "measuredRuns", () =>
            new JsonArray([.. Enumerable.Range(0, draw.Whole(0, 3)).Select(_ => Run(draw, kinds))]));
        return spreader;
    }

    private static JsonObject Run(Draw draw, List<KindWord> kinds) => new()
    {
        ["kind"] = (draw.Chance(0.85) ? draw.Pick(kinds) : draw.Pick(KindWords.All)).Name,
        ["gate"] = draw.Number(1, 10),
        ["weighed"] = draw.Pick(draw.Amount(0.3, 4, 2, "lb"), draw.Amount(5, 60, 1, "oz"), draw.Amount(150, 1500, 0, "g")),
        ["distance"] = draw.Pick("200 ft", "100 ft", "60 m"),
        ["time"] = draw.Amount(25, 90, 0, "s"),
    };
}

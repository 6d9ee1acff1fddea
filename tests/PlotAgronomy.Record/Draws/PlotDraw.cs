using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws the plot: taped sides, walked corners, pieces or an area alone.</summary>
internal static class PlotDraw
{
    private const double MetersPerDegree = 111_320;

    private static readonly string[] Places =
    [
        "Alabama", "Alaska", "Arizona", "Arkansas", "California", "Colorado", "Connecticut", "Delaware", "Florida",
        "Georgia", "Hawaii", "Idaho", "Illinois", "Indiana", "Iowa", "Kansas", "Kentucky", "Louisiana", "Maine",
        "Maryland", "Massachusetts", "Michigan", "Minnesota", "Mississippi", "Missouri", "Montana", "Nebraska",
        "Nevada", "New Hampshire", "New Jersey", "New Mexico", "New York", "North Carolina", "North Dakota",
        "Ohio", "Oklahoma", "Oregon", "Pennsylvania", "Rhode Island", "South Carolina", "South Dakota",
        "Tennessee", "Texas", "Utah", "Vermont", "Virginia", "Washington", "West Virginia", "Wisconsin", "Wyoming",
        "Alberta", "British Columbia", "Manitoba", "New Brunswick", "Newfoundland and Labrador", "Nova Scotia",
        "Ontario", "Prince Edward Island", "Quebec", "Saskatchewan", "Northern Ireland",
    ];

    internal static JsonObject Of(Draw draw, int number, LimeRecipe lime, bool carriedOff)
    {
        var plot = new JsonObject { ["name"] = $"Field {number}" };
        switch (draw.Whole(0, 10))
        {
            case < 6:
                plot["sides"] = SidesDraw.Of(draw);
                break;
            case < 8:
                plot["outline"] = Outline(draw);
                break;
            case < 9:
                plot["pieces"] = SidesDraw.Pieces(draw);
                break;
            default:
                plot["area"] = draw.Pick(
                    draw.Amount(0.05, 3, 2, "ac"), draw.Amount(3000, 90_000, 0, "ft2"), draw.Amount(0.05, 1, 2, "ha"));
                break;
        }

        draw.Maybe(0.85, plot, "texture", () => lime.Reading == LimeReadingWord.WaterPh
            ? draw.Pick("sandy loam", "loam", "clay loam") : draw.Pick(ReportWords.Textures));
        draw.Maybe(0.7, plot, "drainage", () => draw.Pick(ReportWords.Drainages));
        draw.Maybe(0.4, plot, "standsNow", () => StandsNow(draw));
        draw.Maybe(0.4, plot, "grewBefore", () => draw.Pick(draw.Chance(0.6) ? KindWords.Legumes : KindWords.All).Name);
        draw.Maybe(0.5, plot, "place", () => draw.Pick(Places));
        draw.Maybe(0.4, plot, "nearWater", () => draw.Chance(0.3));
        draw.Maybe(0.2, plot, "plantingRegion", () => draw.Pick("North", "Central", "South"));
        plot["use"] = carriedOff ? "cut-and-carried-off" : "browsed";
        return plot;
    }

    internal static bool HasStandingLegume(JsonNode plot) => plot["standsNow"] is { } stands
        && ((string)stands["cover"]! == "legume-stand" || KindWords.Legumes.Any(k => k.Name == (string?)stands["kind"]));

    private static JsonArray Outline(Draw draw)
    {
        double latitude = draw.Number(31, 47, 4);
        double longitude = draw.Number(-98, -72, 4);
        int corners = draw.Whole(3, 9);
        double meters = draw.Number(20, 70);
        var outline = new JsonArray();
        for (int i = 0; i < corners; i++)
        {
            double turn = 2 * Math.PI * i / corners;
            double away = meters * draw.Number(0.6, 1.2, 2);
            double north = away * Math.Cos(turn) / MetersPerDegree;
            double east = away * Math.Sin(turn) / (MetersPerDegree * Math.Cos(latitude * Math.PI / 180));
            outline.Add(new JsonArray(Math.Round(latitude + north, 6), Math.Round(longitude + east, 6)));
        }

        return outline;
    }

    private static JsonObject StandsNow(Draw draw)
    {
        string cover = draw.Pick("bare-ground", "legume-stand", "small-grain", "smother-crop", "weeds", "grass-sod", "brush");
        var stands = new JsonObject { ["cover"] = cover };
        if (cover is "weeds" or "grass-sod" or "brush")
        {
            return stands;
        }

        var kinds = cover == "legume-stand" ? KindWords.Legumes : cover == "small-grain" ? KindWords.Cereals : KindWords.Forbs;
        draw.Maybe(0.75, stands, "kind", () => draw.Pick(kinds).Name);
        draw.Maybe(0.6, stands, "shareOfFullStand", () => draw.Number(0, 0.9, 2));
        return stands;
    }
}

using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws what is to be grown: shares that sum to the total, or rates as a bag prints them.</summary>
internal static class GrowingDraw
{
    internal static List<KindWord> Kinds(Draw draw, NutrientRecipe nutrients)
    {
        int count = draw.Chance(0.25) ? 1 : draw.Whole(2, 7);
        var first = draw.Pick(nutrients.Kinds);
        var pool = draw.Chance(0.5) ? nutrients.Kinds : KindWords.Sowable;
        return [first, .. draw.Several([.. pool.Where(k => k != first)], count - 1)];
    }

    internal static JsonObject Of(Draw draw, List<KindWord> kinds, NutrientRecipe nutrients, bool carriedOff)
    {
        bool allShares = draw.Chance(0.7);
        bool stated = allShares && draw.Chance(0.4);
        int hundredths = stated ? draw.Whole(60, 190) : 100;
        var shares = Shares(draw, kinds.Count, hundredths);
        var rows = new JsonArray();
        for (int i = 0; i < kinds.Count; i++)
        {
            var row = new JsonObject { ["kind"] = draw.Chance(0.5) ? kinds[i].Name : kinds[i].Name.ToLowerInvariant() };
            if (allShares || (i > 0 && draw.Chance(0.3)))
            {
                row["shareOfFullStand"] = shares[i] / 100.0;
            }
            else
            {
                row["rate"] = Rate(draw, kinds[i], shares[i]);
                row["rateIs"] = draw.Pick("pure live seed", "pure live seed", "bulk");
                row["rateFor"] = draw.Pick("drilled", "broadcast", "broadcast", "broadcast-under-cover", "frost-seeded");
            }

            if (nutrients.YieldUnitOf(kinds[i]) is { } unit)
            {
                draw.Maybe(carriedOff ? 1 : 0.15, row, "yield", () => new JsonObject
                {
                    ["value"] = unit == "bu/ac" ? draw.Number(15, 140, 0) : draw.Number(0.5, 6),
                    ["unit"] = unit,
                });
            }

            rows.Add(row);
        }

        var growing = new JsonObject { ["kinds"] = rows };
        if (stated)
        {
            growing["totalShare"] = hundredths / 100.0;
        }

        return growing;
    }

    private static string Rate(Draw draw, KindWord kind, int share)
    {
        double pounds = kind.FullRate * share / 100;
        return draw.Pick(
            draw.Amount(pounds, pounds * 1.4, 2, "lb/ac"),
            draw.Amount(pounds, pounds * 1.5, 2, "kg/ha"),
            draw.Amount(pounds / 43.56, pounds / 30, 3, "lb/1000 ft2"));
    }

    /// <summary>Shares in whole hundredths, none below 3, that sum to the total.</summary>
    private static int[] Shares(Draw draw, int count, int total)
    {
        var weights = Enumerable.Range(0, count).Select(_ => draw.Number(1, 5, 2)).ToList();
        int[] shares = [.. weights.Select(w => Math.Max(3, (int)(total * w / weights.Sum())))];
        shares[0] += total - shares.Sum();
        return shares;
    }
}

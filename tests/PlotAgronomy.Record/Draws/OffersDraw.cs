using System.Text.Json.Nodes;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws what is on offer: lime, fertilizer, lots of seed and a store's blends.</summary>
internal static class OffersDraw
{
    internal static JsonObject Of(Draw draw, List<KindWord> kinds, DateOnly planting)
    {
        var materials = new JsonObject();
        draw.Maybe(0.93, materials, "lime", () => Array(draw.Whole(draw.Chance(0.05) ? 0 : 1, 3), i => Lime(draw, i)));
        draw.Maybe(0.93, materials, "fertilizers", () => Fertilizers(draw));
        materials["seedLots"] = Lots(draw, kinds, planting);
        draw.Maybe(0.15, materials, "storeBlends", () => Array(draw.Whole(1, 2), i => StoreBlend(draw, i, kinds, planting)));
        return materials;
    }

    private static JsonArray Array(int count, Func<int, JsonObject> item) => [.. Enumerable.Range(1, count).Select(item)];

    private static JsonObject Lime(Draw draw, int number)
    {
        var (form, low, high) = draw.Pick(OfferWords.Limes);
        var lime = new JsonObject { ["name"] = $"{form} {number}", ["form"] = form, ["cce"] = draw.Number(low, high) };
        draw.Maybe(0.35, lime, "moisture", () => draw.Percent(0, form == "suspension" ? 50 : 9));
        draw.Maybe(0.4, lime, "magnesium", () => draw.Percent(0.2, 12));
        draw.Maybe(0.6, lime, "sieves", () => Sieves(draw));
        draw.Maybe(0.4, lime, "labelFigures", () => new JsonArray(
            [.. draw.Several(OfferWords.LabelFigures, draw.Whole(1, 3))
                .Select(f => new JsonObject { ["index"] = f.Index, ["value"] = draw.Number(f.Low, f.High) })]));
        draw.Maybe(0.25, lime, "poundsEqualToOneTon", () => draw.Whole(1850, 2700));
        lime["package"] = draw.Pick("40 lb", "50 lb", "25 kg", "1 ton");
        lime["price"] = (string)lime["package"]! == "1 ton" ? draw.Price(25, 60) : draw.Price(3, 9);
        return lime;
    }

    private static JsonArray Sieves(Draw draw)
    {
        double passing = draw.Number(88, 100);
        var sieves = new JsonArray();
        int[] meshes = draw.Pick<int[]>(
            [8, 20, 60, 100], [10, 50, 100], [8, 60], [4, 8, 30, 60], [20, 40, 100], [8, 20, 50, 60, 100]);
        foreach (int mesh in meshes)
        {
            sieves.Add(new JsonObject { ["mesh"] = mesh, ["passing"] = Draw.Words(Math.Round(passing, 1), "%") });
            passing *= draw.Number(0.55, 0.98, 2);
        }

        return sieves;
    }

    private static JsonArray Fertilizers(Draw draw)
    {
        var offers = draw.Several(OfferWords.Usual, draw.Whole(0, 5));
        offers.AddRange(draw.Several([.. OfferWords.Fertilizers.Except(offers)], draw.Whole(0, 3)));
        return
        [
            .. offers.Select(offer =>
            {
                var row = new JsonObject { ["name"] = offer.Name, ["analysis"] = offer.Analysis };
                (string, string?)[] words =
                [
                    ("substance", offer.Substance), ("sulfur", offer.Sulfur),
                    ("magnesium", offer.Magnesium), ("boron", offer.Boron),
                ];
                foreach (var (field, word) in words)
                {
                    if (word is not null)
                    {
                        row[field] = word;
                    }
                }

                row["package"] = draw.Pick("50 lb", "50 lb", "40 lb", "25 kg", "20 lb");
                row["price"] = draw.Price(9, 48);
                return row;
            }),
        ];
    }

    private static JsonArray Lots(Draw draw, List<KindWord> kinds, DateOnly planting)
    {
        var lots = new JsonArray();
        foreach (var kind in draw.Chance(0.15) ? [.. kinds, draw.Pick(KindWords.All)] : kinds)
        {
            int count = draw.Chance(0.75) ? 1 : draw.Whole(2, 3);
            for (int i = 0; i < count; i++)
            {
                lots.Add(Lot(draw, kind, planting, lots.Count + 1));
            }
        }

        return lots;
    }

    private static JsonObject Lot(Draw draw, KindWord kind, DateOnly planting, int number)
    {
        var lot = new JsonObject { ["kind"] = kind.Name };
        draw.Maybe(0.9, lot, "lot", () => $"lot {number}");
        double coating = draw.Chance(0.15) ? draw.Number(5, 45) : 0;
        lot["pureSeed"] = Draw.Words(Math.Round(draw.Number(88, 99.5) * (1 - (coating / 100)), 1), "%");
        if (draw.Chance(0.04))
        {
            lot["tetrazolium"] = Draw.Words(draw.Number(60, 96, 0), "%");
        }
        else
        {
            AddGermination(draw, lot);
        }

        draw.Maybe(0.06, lot, "seedsPerPound", () => Counted(draw, kind));
        draw.Maybe(0.08, lot, "treated", () => draw.Chance(0.7));
        draw.Maybe(0.1, lot, "preinoculated", () => draw.Chance(0.7));
        if (coating > 0)
        {
            lot["coating"] = Draw.Words(coating, "%");
        }

        lot["tested"] = Tested(draw, planting);
        bool large = kind.FullRate >= 15;
        lot["package"] = large ? draw.Pick("50 lb", "25 lb", "25 kg") : draw.Pick("5 lb", "10 lb", "2 lb", "25 lb", "80 oz");
        lot["price"] = large ? draw.Price(14, 95) : draw.Price(8, 70);
        return lot;
    }

    /// <summary>A count near what is published, or of a kind that nobody counted.</summary>
    private static double Counted(Draw draw, KindWord kind) =>
        Math.Round(
            draw.Number(0.6, 1.6, 3) * (KindCatalog.Standard.Find(kind.Name).SeedCount?.SeedsPerPound ?? 60_000),
            MidpointRounding.ToEven);

    private static void AddGermination(Draw draw, JsonObject tag)
    {
        double germination = draw.Number(58, 94, 0);
        tag["germination"] = Draw.Words(germination, "%");
        double hard = draw.Chance(0.3) ? Math.Min(99 - germination, draw.Number(1, 20, 0)) : 0;
        if (hard > 0)
        {
            tag["hardSeed"] = Draw.Words(hard, "%");
        }

        double dormant = draw.Chance(0.1) ? Math.Min(99 - germination - hard, draw.Number(1, 12, 0)) : 0;
        if (dormant > 0)
        {
            tag["dormantSeed"] = Draw.Words(dormant, "%");
        }
    }

    private static string Tested(Draw draw, DateOnly planting) =>
        Draw.Day(planting.AddDays(-draw.Whole(10, draw.Chance(0.15) ? 900 : 300)));

    private static JsonObject StoreBlend(Draw draw, int number, List<KindWord> kinds, DateOnly planting)
    {
        var bag = new JsonObject
        {
            ["name"] = $"store bag {number}",
            ["package"] = draw.Pick("20 lb", "25 lb", "10 lb", "50 lb"),
            ["price"] = draw.Price(18, 95),
            ["claimedArea"] = draw.Pick("0.25 ac", "0.5 ac", "1 ac", "11,000 ft2"),
        };
        double left = 100;
        double Take(double part)
        {
            double taken = Math.Round(part, 1);
            left -= taken;
            return taken;
        }

        var rest = new JsonObject();
        double coating = draw.Chance(0.3) ? draw.Number(3, 35) : 0;
        draw.Maybe(0.7, rest, "otherCrop", () => Draw.Words(Take(draw.Number(0.1, 1.5)), "%"));
        draw.Maybe(coating > 0 ? 1 : 0.85, rest, "inert", () => Draw.Words(Take(coating + draw.Number(0.5, 4)), "%"));
        draw.Maybe(0.7, rest, "weed", () => Draw.Words(Take(draw.Number(0.1, 0.5)), "%"));
        draw.Maybe(coating > 0 ? 1 : 0, rest, "coating", () => Draw.Words(coating, "%"));
        draw.Maybe(0.3, rest, "treated", () => draw.Chance(0.5));
        rest["tested"] = Tested(draw, planting);

        KindWord[] pool = draw.Chance(0.6) ? [.. kinds, .. draw.Several(KindWords.All, 2)] : KindWords.All;
        var named = draw.Several(pool, draw.Whole(2, 6)).Distinct().ToList();
        var parts = new JsonArray();
        for (int i = 0; i < named.Count; i++)
        {
            double part = i == named.Count - 1 ? left : left * draw.Number(0.2, 0.6, 2);
            var row = new JsonObject { ["kind"] = named[i].Name, ["pureSeed"] = Draw.Words(Take(part), "%") };
            AddGermination(draw, row);
            draw.Maybe(0.2, row, "tested", () => Tested(draw, planting));
            parts.Add(row);
        }

        bag["components"] = parts;
        foreach (var (name, value) in rest)
        {
            bag[name] = value?.DeepClone();
        }

        return bag;
    }
}

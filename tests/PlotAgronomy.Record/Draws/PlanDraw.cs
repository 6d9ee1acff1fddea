using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws one plan. Every field of the schema stands in some plans and not in others.</summary>
internal static class PlanDraw
{
    private static readonly string[] Methods =
        ["tilled-and-packed", "broadcast-then-rolled", "broadcast-then-mown", "frost-seeded", "drilled"];

    private const double LittleTold = 0.04;

    /// <summary>What some owners have not told yet.</summary>
    private static readonly string[] Untold =
        ["currency", "plantingDate", "method", "soilReport", "methods", "growing", "materials", "spreader"];

    internal static JsonObject Of(int number, int attempt)
    {
        var draw = new Draw(((ulong)number * 1000) + (ulong)attempt);
        string method = draw.Pick(Methods);
        var lime = draw.Pick(LimeRecipe.All);
        var nutrients = draw.Pick(NutrientRecipe.All);
        var kinds = GrowingDraw.Kinds(draw, nutrients);
        bool carriedOff = draw.Chance(0.25) && kinds.All(k => nutrients.YieldUnitOf(k) is not null);
        var planting = method == "frost-seeded"
            ? new DateOnly(2027, 2, 1).AddDays(draw.Whole(0, 50))
            : new DateOnly(2026, 3, 20).AddDays(draw.Whole(0, 540));
        var sampled = planting.AddDays(-draw.Whole(5, draw.Chance(0.2) ? 1500 : 330));
        var plan = new JsonObject();
        draw.Maybe(0.3, plan, "$schema", () => "plan.schema.json");
        plan["planVersion"] = 1;
        plan["currency"] = draw.Pick("USD", "USD", "CAD", "EUR");
        draw.Maybe(0.1, plan, "pace", () => draw.Amount(2.2, 3.4, 2, "ft"));
        plan["plantingDate"] = Draw.Day(planting);
        draw.Maybe(0.8, plan, "limeDate", () => Draw.Day(planting.AddDays(draw.Whole(-330, draw.Chance(0.1) ? 40 : -3))));
        draw.Maybe(0.7, plan, "tillageDepth", () => draw.Amount(2, 9, 0, "in"));
        plan["method"] = method;
        plan["plot"] = PlotDraw.Of(draw, number, lime, carriedOff);
        plan["soilReport"] = ReportDraw.Of(draw, lime, nutrients, sampled);
        plan["methods"] = Choices(draw, lime, nutrients, PlotDraw.HasStandingLegume(plan["plot"]!));
        plan["growing"] = GrowingDraw.Of(draw, kinds, nutrients, carriedOff);
        plan["materials"] = OffersDraw.Of(draw, kinds, planting);
        NameLots(draw, plan);
        plan["spreader"] = SpreaderDraw.Of(draw, kinds);
        draw.Maybe(0.2, plan, "homePh", () => HomePh(draw));
        draw.Maybe(0.4, plan, "season", () => SeasonDraw.Of(draw, planting));
        FurtherDraw.Add(draw, plan, kinds);
        draw.LeaveOut(LittleTold, plan, Untold);
        return plan;
    }

    private static JsonObject HomePh(Draw draw)
    {
        var reading = new JsonObject { ["ph"] = draw.Number(4.8, 7.5) };
        draw.Maybe(0.5, reading, "error", () => draw.Number(0.2, 1));
        return reading;
    }

    /// <summary>Some kinds name the lot to sow.</summary>
    private static void NameLots(Draw draw, JsonObject plan)
    {
        var lots = plan["materials"]!["seedLots"]!.AsArray();
        foreach (var kind in plan["growing"]!["kinds"]!.AsArray())
        {
            string name = (string)kind!["kind"]!;
            var own = lots.FirstOrDefault(l => name.Equals((string)l!["kind"]!, StringComparison.OrdinalIgnoreCase) && l["lot"] is not null);
            if (own is not null)
            {
                draw.Maybe(0.1, kind.AsObject(), "lot", () => (string)own["lot"]!);
            }
        }
    }

    private static JsonObject Choices(Draw draw, LimeRecipe lime, NutrientRecipe nutrients, bool legumeStands)
    {
        var methods = new JsonObject { ["lime"] = lime.Method, ["nutrients"] = nutrients.System };
        draw.Maybe(0.4, methods, "legumeCredit", () =>
            draw.Pick(legumeStands ? ReportWords.CreditsOfStands : ReportWords.CreditsOfEarlierLegumes));
        draw.Maybe(0.35, methods, "targetPh", () => draw.Number(5.8, 7, 1));
        return methods;
    }
}

using System.Text.Json.Nodes;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Fertilizers;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Whatever reading accepts, solving answers: with numbers, a question or a caution, never with a throw.</summary>
public class PlanGateSolveTests
{
    private static FieldSheet Sheet(string text)
    {
        var reading = PlanFile.Read(text);
        Assert.Empty(reading.Problems);
        var sheet = FieldSheet.Of(reading.Plan!.Solve());
        Assert.NotEmpty(sheet.ToText(FieldSheetWriting.UsualWidth, showWork: true));
        return sheet;
    }

    [Theory]
    [InlineData("fall-blend", "26000 ac")]
    [InlineData("clover-lots", "35000 ac")]
    [InlineData("clover-lots", "260000 ac")]
    public void A_product_offered_twice_and_an_area_in_a_wrong_unit_do_not_break_the_search(string demo, string area) =>
        Sheet(EditedPlan.Of(demo, plan =>
        {
            plan["plot"]!.AsObject().Remove("sides");
            EditedPlan.Set(plan, "plot.area", area);
            var offers = plan["materials"]!["fertilizers"]!.AsArray();
            offers.Insert(0, offers[0]!.DeepClone());
        }));

    [Fact]
    public void A_search_stopped_before_its_first_set_names_the_nearest_one_and_says_so()
    {
        // By hand: a bag of 46-0-0 holds 23 lb N, one of 24-0-0 holds 12. No whole bags hold 20 to 21 lb, and one linear program
        // (0.87 bag) proves nothing of that: up is above the cap, down is no bag. One bag of 12 lb is the nearest below the cap.
        var need = PlotNeed.Stated(
            NutrientTarget.Create(PlantNutrient.Nitrogen, ApplicationRate.FromPoundsPerAcre(20), ApplicationRate.FromPoundsPerAcre(21), "stated"));
        var shelf = FertilizerShelf.FromOffers(FertilizerShelfTests.Bag("46-0-0", 24), FertilizerShelfTests.Bag("24-0-0", 20));
        var stopped = shelf.Cheapest(need, Area.FromAcres(1), PurchaseForm.SpreadWholePackages, searchLimit: 1);
        Assert.False(stopped.IsUndecided);
        Assert.False(stopped.IsProvenCheapest);
        Assert.False(stopped.MeetsEveryNeed);
        Assert.Null(stopped.Conflict);
        Assert.Equal(1, Assert.Single(stopped.Lines).Packages);
        Assert.Equal(20, stopped.TotalCost);
        Assert.Contains(stopped.Findings, f => f.Code == FertilizerCodes.SearchStoppedShort);
        Assert.DoesNotContain(stopped.Findings, f => f.Code is FertilizerCodes.SearchStopped or FertilizerCodes.SearchUndecided);
        var whole = shelf.Cheapest(need, Area.FromAcres(1), PurchaseForm.SpreadWholePackages);
        Assert.False(whole.IsUndecided);
        Assert.NotNull(whole.Conflict);
    }

    [Theory]
    [InlineData("tennessee-cover", "legume-stand", "crimson clover", null, PlanningCodes.CreditNeedsEarlier)]
    [InlineData("tennessee-cover", "bare-ground", "alfalfa", null, PlanningCodes.CreditNeedsEarlier)]
    [InlineData("tennessee-clover-in-grass", "bare-ground", null, "soybean-grain", PlanningCodes.CreditNeedsStand)]
    [InlineData("tennessee-cover", "legume-stand", "crimson clover", "soybean-grain", null)]
    [InlineData("tennessee-clover-in-grass", "legume-stand", "crimson clover", "soybean-grain", null)]
    public void A_credit_whose_legume_is_not_there_is_not_taken_and_said(string credit, string cover, string? kind, string? before, string? code)
    {
        string text = EditedPlan.Of("fall-blend", plan =>
        {
            EditedPlan.Set(plan, "methods.legumeCredit", credit);
            var stands = new JsonObject { ["cover"] = cover };
            if (kind is not null)
            {
                stands["kind"] = kind;
            }

            EditedPlan.Set(plan, "plot.standsNow", stands);
            if (before is not null)
            {
                EditedPlan.Set(plan, "plot.grewBefore", before);
            }
        });
        string[] codes = [PlanningCodes.CreditNeedsEarlier, PlanningCodes.CreditNeedsStand];
        Assert.Equal(code is null ? [] : [code], Sheet(text).Findings.Select(f => f.Code).Where(codes.Contains));
    }

    [Fact]
    public void Every_credit_answers_on_every_ground()
    {
        foreach (var credit in LegumeCredit.All.Concat(LegumeCredit.Unchecked))
        {
            foreach (string cover in (string[])["legume-stand", "bare-ground"])
            {
                foreach (string? before in (string?[])[null, "soybean-grain", "winter wheat"])
                {
                    string text = EditedPlan.Of("clover-lots", plan =>
                    {
                        EditedPlan.Set(plan, "methods.legumeCredit", credit.Id);
                        EditedPlan.Set(plan, "plot.standsNow", new JsonObject { ["cover"] = cover, ["kind"] = "crimson clover" });
                        EditedPlan.Set(plan, "plot.grewBefore", before ?? "chicory");
                    });
                    Assert.NotEmpty(PlanFile.Read(text).Plan!.Solve().Findings);
                }
            }
        }
    }

    [Theory]
    [InlineData("Egyptian wheat")]
    [InlineData("American jointvetch")]
    public void A_kind_without_a_seed_count_is_a_question(string kind)
    {
        string text = EditedPlan.Of("clover-lots", plan =>
        {
            EditedPlan.Set(plan, "growing.kinds.0.kind", kind);
            plan["plot"]!.AsObject().Remove("drainage");
            EditedPlan.Set(plan, "soilReport.waterPh", 6.3);
            foreach (var lot in plan["materials"]!["seedLots"]!.AsArray())
            {
                lot!["kind"] = kind;
            }
        });
        var answers = PlanFile.Read(text).Plan!.Solve();
        Assert.Equal(AnswerState.Open, answers.Seed.State);
        Assert.NotEmpty(answers.Seed.Questions);
        Assert.NotNull(Sheet(text));
    }

    [Fact]
    public void A_lime_whose_label_says_it_does_nothing_is_left_out() =>
        Sheet(EditedPlan.Of("fall-blend", plan =>
        {
            var lime = plan["materials"]!["lime"]![0]!.AsObject();
            lime.Remove("poundsEqualToOneTon");
            lime["labelFigures"] = JsonNode.Parse("[{ \"index\": \"north-carolina\", \"value\": 0 }]");
            if (PlanFile.Read(plan.ToJsonString()).Plan is null)
            {
                lime.Remove("labelFigures");
                lime["cce"] = 0;
            }
        }));

    [Fact]
    public void Lime_methods_are_not_counted_in_a_material_that_is_no_lime()
    {
        var plan = PlanFile.Read(EditedPlan.With("fall-blend", "materials.lime.0", "{ \"name\": \"gypsum\", \"form\": \"gypsum\", \"cce\": 0, \"package\": \"40 lb\", \"price\": 5.6 }")).Plan!;
        var compared = plan.CompareLime(material: plan.LimeOffers[0].Item);
        Assert.All(compared.Comparison.Answers, a => Assert.Null(a.Common));
        Assert.NotEmpty(FieldSheet.Of(compared).ToText(FieldSheetWriting.UsualWidth, showWork: true));
    }

    [Fact]
    public void Boron_in_an_index_of_another_extractant_is_not_judged() =>
        Sheet(EditedPlan.Of("frost-seeding", plan =>
            plan["soilReport"]!["readings"]!.AsArray().Add(
                JsonNode.Parse("{ \"analyte\": \"B\", \"value\": 1, \"unit\": \"Oklahoma index\", \"extractant\": \"Olsen\" }"))));
}

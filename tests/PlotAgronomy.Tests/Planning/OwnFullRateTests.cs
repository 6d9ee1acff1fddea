using System.Text.Json.Nodes;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>The rate for a full stand that a tag or a guide prints is counted before what publications print.</summary>
public class OwnFullRateTests
{
    private static PlotPlan Read(Action<JsonNode> change, int problems = 0)
    {
        var json = JsonNode.Parse(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json")))!;
        change(json);
        var reading = PlanFile.Read(json.ToJsonString());
        Assert.Equal(problems, reading.Problems.Length);
        return problems == 0 ? reading.Plan! : null!;
    }

    private static JsonArray Kinds(JsonNode json) => json["growing"]!["kinds"]!.AsArray();

    /// <summary>Closed form: a quarter of a full stand of 40 lb is 10 lb of living seed an acre.</summary>
    [Fact]
    public void It_is_counted_and_the_question_is_gone()
    {
        string[] asked = [.. Read(_ => { }).Kinds.Where(k => k.Kind.FullRange(SowingMethod.Broadcast).IsFromTooFew).Select(k => k.Kind.Id)];
        Assert.NotEmpty(asked);
        var plan = Read(json =>
        {
            foreach (var kind in Kinds(json))
            {
                kind!["fullRate"] = "40 lb/ac";
            }
        });
        var answers = plan.Solve();
        Assert.DoesNotContain(answers.Questions, q => q.Code == SeedCodes.AskFullRate);
        Assert.All(
            answers.Seed.Value.Blend.Parts,
            p => Assert.Equal(40 * plan.Kinds.Single(k => k.Kind == p.Kind).Share.ShareOfFullStand, p.LiveRate.PoundsPerAcre, 1e-9)
        );
    }

    [Fact]
    public void It_is_written_back()
    {
        var plan = Read(json => Kinds(json)[0]!["fullRate"] = "96 lb/ac");
        Assert.Equal(96, plan.Kinds[0].FullRate!.Value.PoundsPerAcre);
        var again = PlanFile.Read(PlanFile.Write(plan)).Plan!;
        Assert.Equal(plan.Kinds[0].FullRate, again.Kinds[0].FullRate);
    }

    /// <summary>Closed form: 24 lb of a full stand of 96 lb are a quarter of it.</summary>
    [Fact]
    public void A_rate_is_a_share_of_it()
    {
        var plan = Read(json =>
        {
            var kind = Kinds(json)[0]!.AsObject();
            double share = kind["shareOfFullStand"]!.GetValue<double>();
            kind.Remove("shareOfFullStand");
            kind["rate"] = System.FormattableString.Invariant($"{96 * share} lb/ac");
            kind["rateIs"] = "pure live seed";
            kind["rateFor"] = "broadcast";
            kind["fullRate"] = "96 lb/ac";
            Kinds(json)[0]!["fullRate"] = "96 lb/ac";
        });
        Assert.Equal(Read(_ => { }).Kinds[0].Share.ShareOfFullStand, plan.Kinds[0].Share.ShareOfFullStand, 1e-9);
    }

    [Fact]
    public void Without_a_way_of_planting_it_cannot_be_counted() =>
        Read(
            json =>
            {
                json.AsObject().Remove("method");
                Kinds(json)[0]!["fullRate"] = "96 lb/ac";
            },
            problems: 1
        );
}

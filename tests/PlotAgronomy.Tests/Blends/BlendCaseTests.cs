using PlotAgronomy.Blends;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

/// <summary>Situations plot owners ask about.</summary>
public class BlendCaseTests
{
    [Fact]
    public void Three_light_brassicas_are_crowded_by_half()
    {
        var blend = SampleBlends.TurnipRapeRadish();
        var full = blend.AtStandTotal(1);

        PracticeCase.AssertMatches("C45", "F", blend.StandTotal.Chosen);
        PracticeCase.AssertMatches("C45", "turnip at F 1", full.Parts[0].LiveRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C45", "rape at F 1", full.Parts[1].LiveRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C45", "radish at F 1", full.Parts[2].LiveRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C45", "seeds", blend.LiveSeedsPerSquareFoot);
    }

    [Fact]
    public void A_single_kind_that_is_crowded_does_not_compete_with_its_family()
    {
        var alone = Blend.FromSharesOfFullStand((SampleBlends.TurnipRapeRadish().Parts[0].Component, 3));
        var codes = CrowdingReport.For(alone).Findings.Select(f => f.Code).ToList();
        Assert.Contains(codes, c => c is "blend-crowded" or "blend-crowded-at-every-rate");
        Assert.DoesNotContain("blend-one-family", codes);
    }

    [Fact]
    public void Crowded_brassicas_get_their_cautions_and_no_cap()
    {
        var blend = SampleBlends.TurnipRapeRadish();
        var codes = CrowdingReport.For(blend).Findings.Select(f => f.Code).ToArray();

        Assert.Contains("blend-crowded-at-every-rate", codes);
        Assert.Contains("blend-one-family", codes);
        Assert.Contains("blend-too-dense", codes);
        Assert.Contains("blend-total-uncertain", codes);
        Assert.DoesNotContain("blend-group-over-cap", codes);
        // By hand over what is printed: turnip 1.5-4.5, rape 5, radish 12-15 lb/ac.
        Assert.Equal(3 / 4.5 + 2 / 5.0 + 5 / 15.0, blend.StandTotal.Lowest, 1e-9);
        Assert.Equal(3 / 1.5 + 2 / 5.0 + 5 / 12.0, blend.StandTotal.Highest, 1e-9);
    }

    [Fact]
    public void Five_pounds_of_each_small_seed_is_three_stands_on_one_field()
    {
        var blend = SampleBlends.FiveDrilled();

        PracticeCase.AssertMatches("C47", "F", blend.StandTotal.Chosen);
        PracticeCase.AssertMatches("C47", "weight", blend.LiveRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C47", "seeds", blend.LiveSeedsPerSquareFoot);
        PracticeCase.AssertMatches("C47", "scale to F 1.25", blend.AtStandTotal(1.25).LiveRate / blend.LiveRate);
    }

    [Fact]
    public void Full_stands_and_brassicas_over_their_cap_are_named()
    {
        var blend = SampleBlends.FiveDrilled();
        var findings = CrowdingReport.For(blend).Findings;

        Assert.Equal(2, findings.Count(f => f.Code == "blend-kind-is-full-stand"));
        Assert.Contains(findings, f => f.Code == "blend-group-over-cap" && f.Text.Contains("brassicas", StringComparison.Ordinal));
        Assert.Contains(blend.Findings, f => f.Code == "blend-drilled-rates");
    }

    [Fact]
    public void Equal_weights_are_not_equal_plants()
    {
        var blend = SampleBlends.FourGrains();

        PracticeCase.AssertMatches("C49", "F", blend.StandTotal.Chosen);
        PracticeCase.AssertMatches("C49", "pea, share of seeds", blend.Parts[0].ShareOfLiveSeeds.Percent);
        PracticeCase.AssertMatches("C49", "rye, share of seeds", blend.Parts[1].ShareOfLiveSeeds.Percent);
        PracticeCase.AssertMatches("C49", "seeds", blend.LiveSeedsPerSquareFoot);
        PracticeCase.AssertMatches("C49", "half acre", blend.WeighFor(Area.FromAcres(0.5)).Total.Pounds);
        Assert.DoesNotContain(CrowdingReport.For(blend).Findings, f => f.Code is "blend-crowded" or "blend-crowded-at-every-rate" or "blend-group-over-cap" or "blend-too-dense" or "blend-one-family");
    }

    [Fact]
    public void Six_pounds_of_clover_on_a_quarter_acre_is_three_times_the_rate()
    {
        var ladino = SampleBlends.Broadcast("ladino-clover", 8, 776_000);
        var sown = Blend.FromBatch(Area.FromAcres(0.25), (ladino, PlotAgronomy.Seeds.BulkSeedMass.FromPounds(6)));

        PracticeCase.AssertMatches("C51", "rate", sown.BulkRate.PoundsPerAcre);
        PracticeCase.AssertMatches("C51", "times the rate", sown.StandTotal.Chosen);
        PracticeCase.AssertMatches("C51", "seeds", sown.LiveSeedsPerSquareFoot);
        PracticeCase.AssertMatches("C51", "enough", sown.AtStandTotal(1).WeighFor(Area.FromAcres(0.25)).Total.Pounds);
        Assert.Contains(CrowdingReport.For(sown).Findings, f => f.Code == "blend-crowded-at-every-rate");
    }
}

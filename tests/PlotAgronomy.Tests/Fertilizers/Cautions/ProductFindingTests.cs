using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>What is said of products and how they go on; limits are common practice, losses those of the trials.</summary>
public class ProductFindingTests
{
    private static string[] Codes(FieldConditions field, params string[] grades)
    {
        ImmutableArray<(FertilizerProduct, Mass)> products = [.. grades.Select(g => (Bag(g, 10).Item, Mass.FromPounds(50)))];
        var rate = ApplicationRate.FromPoundsPerAcre(100);
        ImmutableArray<(FertilizerProduct, ApplicationRate)> rates = [.. grades.Select(g => (Bag(g, 10).Item, rate))];
        return [.. ProductFindings.Of(products, NutrientBalances.Of([], rates.AsSpan()), field).Select(f => f.Code)];
    }

    private static FieldConditions At(double fahrenheit, bool? isIncorporated = null, double? ph = null) => new()
    {
        IsIncorporated = isIncorporated,
        SoilTemperature = Temperature.FromDegreesFahrenheit(fahrenheit),
        Soil = ph is { } known
            ? PlotSoil.For(new SoilReport { Laboratory = "a laboratory", WaterPh = WaterPh.FromValue(known) })
            : null,
    };

    [Fact]
    public void A_loss_is_named_for_urea_on_the_surface_at_a_known_temperature()
    {
        Assert.Contains("fertilizer-surface-urea-loss", Codes(At(65), "46-0-0"));
        Assert.DoesNotContain("fertilizer-surface-urea-loss", Codes(At(65, isIncorporated: true), "46-0-0"));
        Assert.DoesNotContain("fertilizer-surface-urea-loss", Codes(FieldConditions.Unknown, "46-0-0"));
        Assert.DoesNotContain("fertilizer-surface-urea-loss", Codes(At(65), "0-0-60"));
        // Between the printed classes, at 55 F, practice names none, unless the pH alone says the most.
        Assert.DoesNotContain("fertilizer-surface-urea-loss", Codes(At(55), "46-0-0"));
        Assert.DoesNotContain("fertilizer-surface-urea-loss", Codes(At(55, ph: 7.5), "46-0-0"));
        Assert.Contains("fertilizer-surface-urea-loss", Codes(At(55, ph: 7.6), "46-0-0"));
    }

    [Theory]
    [InlineData(77, true)] // 25 C: up to 46 % was measured, 40 % is the planning figure
    [InlineData(76, false)]
    [InlineData(65, false)]
    public void A_trial_that_lost_more_than_is_planned_is_named(double fahrenheit, bool isNamed) =>
        Assert.Equal(isNamed, Codes(At(fahrenheit), "46-0-0").Contains("fertilizer-surface-urea-measured"));

    [Theory]
    [InlineData("0.3-0.3-0.3", true)]
    [InlineData("0.4-0.3-0.3", true)]
    [InlineData("0.5-0.3-0.3", false)]
    public void Nutrients_that_make_no_more_than_a_percent_are_doubted(string grade, bool isAsked) =>
        Assert.Equal(isAsked, Codes(FieldConditions.Unknown, grade).Contains("fertilizer-analysis-share"));

    [Fact]
    public void Salt_at_the_seed_is_nitrogen_or_potash()
    {
        var atSeed = new FieldConditions { TouchesSeed = true };
        Assert.Contains("fertilizer-seed-contact", Codes(atSeed, "46-0-0"));
        Assert.Contains("fertilizer-seed-contact", Codes(atSeed, "0-0-60"));
        Assert.DoesNotContain("fertilizer-seed-contact", Codes(atSeed, "0-46-0"));
        Assert.Contains(
            "fertilizer-seed-contact",
            Codes(new FieldConditions { SeedRowLimit = SeedPlacedLimit.All[0] }, "0-0-60")
        );
        Assert.DoesNotContain("fertilizer-boron-with-seed", Codes(atSeed, "0-0-60"));
    }

    [Fact]
    public void Where_nothing_is_spread_nothing_is_said()
    {
        Assert.Empty(Codes(new FieldConditions { TouchesSeed = true, TouchesInoculatedSeed = true, IsNearWater = true }));
        Assert.Equal(["fertilizer-water-and-weather"], Codes(FieldConditions.Unknown, "0-46-0"));
        Assert.Equal(["fertilizer-water-and-weather"], Codes(new FieldConditions { IsNearWater = true }, "0-46-0"));
        Assert.Empty(Codes(new FieldConditions { IsNearWater = false }, "0-46-0"));
    }

    [Fact]
    public void What_is_known_of_a_field_is_said_in_words()
    {
        Assert.Equal("nothing known", FieldConditions.Unknown.ToString());
        Assert.Equal(
            "a stand of legumes, worked in, near water, touching the seed",
            new FieldConditions { IsLegumeStand = true, IsIncorporated = true, IsNearWater = true, TouchesSeed = true }.ToString()
        );
        Assert.Equal(
            "no stand of legumes, left on the surface, not near water",
            new FieldConditions { IsLegumeStand = false, IsIncorporated = false, IsNearWater = false }.ToString()
        );
    }

    [Fact]
    public void The_room_s_questions_name_what_may_be_answered()
    {
        Assert.Equal(["water is near", "no water is near"], FertilizerQuestions.NearWater().PlausibleTexts);
        Assert.Equal(["45 F", "55 F", "65 F", "75 F", "85 F"], FertilizerQuestions.SoilTemperature().PlausibleTexts);
        Assert.Empty(FertilizerQuestions.Offer().PlausibleTexts);
    }

    [Theory]
    [InlineData(CountedNutrients.NitrogenPotash, 20)]
    [InlineData(CountedNutrients.NitrogenPotashSulfur, 25)]
    public void Salts_at_the_seed_are_counted_as_the_limit_counts_them(CountedNutrients counted, double percent)
    {
        // 10-10-10 with 5 % sulfur: nitrogen and potash 20 %, with sulfur 25 %.
        var limit = SeedPlacedLimit.All.First(l => l.Counted == counted && l.Limit is { PoundsPerAcre: > 0 });
        var analysis = FertilizerAnalysis.FromGrade("10-10-10-5S");
        Assert.Equal(percent, limit.CountedPercent(analysis));
        Assert.Equal(100 * limit.Limit!.Value.PoundsPerAcre / percent, limit.MostProduct(analysis)!.Value.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void A_limit_without_a_printed_spacing_goes_with_none()
    {
        var wide = SeedPlacedLimit.All.First(l => l is { Limit: not null, RowSpacingLow: null });
        Assert.Null(wide.AtRowSpacing(Length.FromInches(30)));
        Assert.Null(SeedPlacedLimit.All.Single(l => l.Crop == SeedRowCrop.GrainSorghum).AtRowSpacing(Length.FromInches(30)));
    }

    [Theory]
    [InlineData(FertilizerSubstance.Urea, true)]
    [InlineData(FertilizerSubstance.UreaAmmoniumNitrateSolution, true)]
    [InlineData(FertilizerSubstance.AmmoniumThiosulfate, true)]
    [InlineData(FertilizerSubstance.DiammoniumPhosphate, false)]
    public void Three_products_stay_out_of_the_row(FertilizerSubstance substance, bool isBarred) =>
        Assert.Equal(isBarred, SeedPlacedLimit.IsBarredFromTheRow(substance));
}

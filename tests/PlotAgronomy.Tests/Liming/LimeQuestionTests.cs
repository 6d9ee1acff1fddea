using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Where there is no rate, there is a question.</summary>
public class LimeQuestionTests
{
    private static SoilReport Report(WaterPh? ph, params BufferPh[] buffers) =>
        new() { Laboratory = "the county laboratory", WaterPh = ph, BufferPhs = [.. buffers] };

    [Fact]
    public void A_method_that_answers_asks_nothing() =>
        Assert.Empty(LimeMethod.Oregon.NeedFor(Report(WaterPh.FromValue(5.5), BufferPh.FromValue(6.1, SoilBuffer.Sikora)), 6.4).Questions);

    [Fact]
    public void A_missing_reading_is_asked_of_the_laboratory_within_the_methods_range()
    {
        var need = LimeMethod.Oregon.NeedFor(Report(WaterPh.FromValue(5.5)), 6.4);
        Assert.Null(need.Rate);
        var question = Assert.IsType<OpenQuestion<double>>(need.Questions[0]);
        Assert.Equal("lime-ask-reading", question.Code);
        Assert.Equal(WhomToAsk.Laboratory, question.Whom);
        Assert.Equal(6, question.Plausible.Length);
        Assert.Equal(LimeMethod.Oregon.LowestReading, question.Plausible[0]);
        Assert.Equal(LimeMethod.Oregon.HighestReading, question.Plausible[^1]);
    }

    [Fact]
    public void A_report_for_another_buffer_names_the_methods_that_would_answer()
    {
        var need = LimeMethod.NorthCarolina.NeedFor(Report(WaterPh.FromValue(5.5), BufferPh.FromValue(6.1, SoilBuffer.Sikora)), 6.0);
        var other = Assert.Single(need.Questions.OfType<OpenQuestion<LimeMethod>>());
        Assert.Equal("lime-ask-method", other.Code);
        Assert.NotEmpty(other.Plausible);
        Assert.All(other.Plausible, m => Assert.NotNull(m.NeedFor(need.Soil, m.ClosestTarget(6.0)).Rate));
    }

    [Fact]
    public void A_label_that_does_not_tell_the_strength_is_asked_of_the_dealer_and_each_answer_gives_an_order()
    {
        var need = LimeMethod.Oregon.NeedFor(Report(WaterPh.FromValue(5.5), BufferPh.FromValue(6.1, SoilBuffer.Sikora)), 6.4);
        var basis = LimeBasis.All.First(b => b.Figure is { Index.Sieves.IsEmpty: false, Index.IsRelative: false });
        var rate = LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(2), 6.4, Length.FromInches(6), basis, LimeMethod.Oregon.Institution);
        var silent = LimingMaterial.FromAnalysis("field lime", LimingForm.GroundLimestone, 95);
        var cost = Assert.Single(LimingMaterialComparison.For(rate, Area.FromAcres(0.6), [Offer.InBags(silent, Mass.FromPounds(40), 6)]).Costs);
        Assert.Null(cost.Order);
        Assert.NotNull(need.Rate);
        var question = cost.Question!;
        Assert.Equal(WhomToAsk.Dealer, question.Whom);
        Assert.Equal("field lime", question.Subject);
        double[] pounds = [.. question.CasesOf(cost.OrderWith).Select(c => c.Value.Product.Pounds)];
        Assert.Equal(6, pounds.Length);
        Assert.Equal(pounds.OrderDescending(), pounds);
        Assert.Equal(2 * pounds[^1], pounds[0], 1e-6);
    }
}

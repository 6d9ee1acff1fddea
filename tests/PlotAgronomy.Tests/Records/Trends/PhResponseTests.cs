using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

/// <summary>Which readings and which lime the promised pH rests on; sums by hand, with 1.96 x root 2 x 0.1 = 0.277 for two
/// readings.</summary>
public class PhResponseTests
{
    private static readonly DateOnly Limed = Books.Day(2023, 4, 1);

    private static SoilReportEntry Sampled(DateOnly on, double ph, string laboratory = "county laboratory") => new()
    {
        On = on,
        Plot = Books.North,
        Report = Books.Report(ph, 20, laboratory),
    };

    private static NeedEntry Need(double tons = 2, DateOnly? on = null) => new()
    {
        On = on ?? Books.Day(2023, 3, 10),
        Plot = Books.North,
        Lime = LimeRate.FromBasis(
            ApplicationRate.FromShortTonsPerAcre(tons),
            6.5,
            Length.FromInches(6),
            LimeBasis.GroundLimestone,
            Institution.NorthCarolina
        ),
    };

    private static LimeEntry Lime(double pounds, DateOnly? on = null, LimingMaterial? material = null) => new()
    {
        On = on ?? Limed,
        Plot = Books.North,
        Material = material ?? LimingMaterial.FromBasis(LimeBasis.GroundLimestone),
        Loads = [SpreadLoad.FromWeight(Mass.FromPounds(pounds))],
    };

    private static Answer<PhResponse> Of(params BookEntry[] entries) =>
        PhResponse.Of(PlotBook.Empty.With("a", entries), Books.North, Area.FromAcres(1), Books.Day(2025, 6, 1));

    [Fact]
    public void A_reading_of_the_day_of_the_lime_is_one_before_it_and_the_last_one_counts()
    {
        var response = Of(
            Sampled(Books.Day(2022, 3, 1), 5.1),
            Sampled(Limed, 5.5),
            Need(),
            Lime(4000),
            Sampled(Limed.AddDays(400), 6.2),
            Sampled(Limed.AddDays(700), 6.4)
        ).Value;
        Assert.Equal((5.5, 6.4), (response.Before.Value, response.After.Value));
        Assert.Equal((Limed, Limed.AddDays(700)), (response.Before.On, response.After.On));
    }

    [Fact]
    public void A_reading_of_the_day_of_the_last_lime_is_none_after_it()
    {
        var last = Limed.AddDays(60);
        var answer = Of(Sampled(Limed.AddDays(-30), 5.5), Need(), Lime(2000), Lime(2000, last), Sampled(last, 6.0));
        Assert.Equal("record-ask-ph-after", Assert.Single(answer.Questions).Code);
    }

    [Fact]
    public void Dressings_add_up_and_one_of_before_the_need_does_not_count()
    {
        // Two dressings of a quarter of the 2 tons each: half of the rise from 5.5 to 6.5.
        var half = Of(
            Sampled(Limed.AddDays(-40), 5.5),
            Lime(9000, Books.Day(2023, 3, 9)),
            Need(),
            Lime(1000),
            Lime(1000, Limed.AddDays(30)),
            Sampled(Limed.AddDays(790), 6.0)
        ).Value;
        Assert.Equal(6.0 + 0.2772, half.PromisedHigh, 1e-3);
        Assert.True(half.PromisedLow < 6.0 - 0.27);
    }

    [Fact]
    public void The_promise_is_laid_out_with_its_share_at_work()
    {
        var work = Of(Sampled(Limed, 5.5), Need(), Lime(4000), Sampled(Limed.AddDays(790), 6.4)).Value.ShowWork();
        Assert.Equal(["pH promised, least", "pH promised, most"], work.Select(l => l.Label));
        Assert.Equal("5.5 + max(0, 6.5 - 5.5) x 1 + 0.28 = 6.78", work[1].Numbers);
    }

    [Fact]
    public void Where_the_pH_is_above_the_target_already_no_rise_is_promised() =>
        Assert.Equal(
            6.7 + 0.2772,
            Of(Sampled(Limed, 6.7), Need(), Lime(4000), Sampled(Limed.AddDays(790), 6.7)).Value.PromisedHigh,
            1e-3
        );

    [Fact]
    public void Without_lime_or_a_need_of_it_no_answer_is_needed_and_a_later_need_is_none_yet()
    {
        Assert.Equal(AnswerState.NoneNeeded, Of(Sampled(Limed, 5.5), Need()).State);
        Assert.Equal(
            AnswerState.NoneNeeded,
            Of(Sampled(Limed, 5.5), Need(tons: 0), Lime(4000), Sampled(Limed.AddDays(790), 6.4)).State
        );
        Assert.Equal(
            "record-ask-lime-need",
            Assert.Single(Of(Sampled(Limed, 5.5), Need(on: Books.Day(2025, 6, 2)), Lime(4000)).Questions).Code
        );
        Assert.Equal(AnswerState.NoneNeeded, Of(Sampled(Limed, 5.5), Need(), Lime(4000, Books.Day(2025, 6, 2))).State);
    }

    [Fact]
    public void A_reading_of_after_the_day_asked_is_not_counted() =>
        Assert.Equal(
            "record-ask-ph-after",
            Assert.Single(Of(Sampled(Limed, 5.5), Need(), Lime(4000), Sampled(Books.Day(2025, 6, 2), 6.4)).Questions).Code
        );

    [Fact]
    public void A_lime_whose_strength_is_not_known_is_asked_about()
    {
        var sieved = LimeBasis.All.First(b => b.Figure is { Index.Sieves.Length: > 0 });
        var ton = ApplicationRate.FromShortTonsPerAcre(1);
        var need = Need() with { Lime = LimeRate.FromBasis(ton, 6.5, Length.FromInches(6), sieved, Institution.NorthCarolina) };
        var pit = LimingMaterial.FromAnalysis("pit lime", LimingForm.GroundLimestone, 80);
        var answer = Of(Sampled(Limed, 5.5), need, Lime(500, material: pit), Sampled(Limed.AddDays(790), 6.4));
        Assert.Equal("record-ask-lime-strength", Assert.Single(answer.Questions).Code);
    }
}

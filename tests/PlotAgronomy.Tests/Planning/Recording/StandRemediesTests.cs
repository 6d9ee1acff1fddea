using PlotAgronomy.Planning;
using PlotAgronomy.Records;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Records;
using PlotAgronomy.Tests.SampleConsole;
using PlotAgronomy.Weather;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning.Recording;

/// <summary>What may still be sown into a stand that is thin, or in place of one that failed.</summary>
public class StandRemediesTests
{
    private const string Plot = "Fern Bottom";

    private static PlotPlan Plan(string? place = "North Carolina")
    {
        string json = File.ReadAllText(ConsoleTests.Data("fall-blend.json"));
        return PlanFile.Read(place is null ? json : json.Replace("\"use\": \"browsed\"", $"\"place\": \"{place}\", \"use\": \"browsed\"", StringComparison.Ordinal)).Plan!;
    }

    private static PlotBook Book(DateOnly sown, int inHoop, string kind = "crimson clover") => PlotBook.Empty.With(
        "a",
        new SowingEntry { On = sown, Plot = Plot, Area = Area.FromAcres(0.58), Method = SowingMethod.Broadcast, Lots = [new() { Lot = Books.Lot(kind), Used = BulkSeedMass.FromPounds(12) }] },
        new CountEntry { On = sown.AddDays(25), Plot = Plot, Kind = Books.Kind(kind), Hoop = Area.FromSquareFeet(1), Plants = [inHoop, inHoop, inHoop, inHoop, inHoop, inHoop] });

    private static StandRemedy? Remedy(PlotPlan plan, PlotBook book, DateOnly on) => PlotHistory.Of(book, plan, on).Remedies.SingleOrDefault();

    /// <summary>Each named kind is held against the published dates again, by another way than the search.</summary>
    [Theory]
    [InlineData(9, 5)]
    [InlineData(8, 1)]
    [InlineData(4, 10)]
    public void Every_kind_that_is_named_is_in_time_by_a_published_window_and_stands_the_ground(int month, int day)
    {
        var sown = new DateOnly(2026, month, day);
        var on = sown.AddDays(25);
        var plan = Plan();
        var remedy = Remedy(plan, Book(sown, 0), on)!;
        Assert.True(remedy.IsPlaceKnown);
        Assert.Equal(on, remedy.On);
        Assert.All(remedy.InTime, dates =>
        {
            Assert.Contains(PlantingWindow.Published(dates.Kind, plan.Plot.PlantingRegion!), w => w.Rule != PlantingRule.NotRecommended && w.FirstDay(2026) is var from && (from is null || from <= on) && w.LastDay(2026) >= on);
            Assert.False(plan.Soil.WaterPh!.Value < dates.Kind.Ph?.MinimumPh);
        });
        Assert.True(remedy.InTime.Count(d => plan.Kinds.All(k => k.Kind.Id != d.Kind.Id)) <= 3);
    }

    [Fact]
    public void A_kind_of_the_plan_that_is_in_time_goes_first_and_out_of_time_is_not_named()
    {
        Assert.Equal("crimson-clover", Remedy(Plan(), Book(new(2026, 8, 25), 0), new(2026, 9, 19))!.InTime[0].Kind.Id);
        Assert.DoesNotContain(Remedy(Plan(), Book(new(2026, 11, 20), 0), new(2026, 12, 15))!.InTime, d => d.Kind.Id == "crimson-clover");
    }

    /// <summary>A full stand, one counted long ago, and a plan without a place: no kind, and the words say why.</summary>
    [Fact]
    public void A_full_stand_and_an_old_count_ask_for_nothing_and_without_a_place_it_is_asked()
    {
        var sown = new DateOnly(2026, 9, 5);
        Assert.Null(Remedy(Plan(), Book(sown, 60), sown.AddDays(25)));
        Assert.NotNull(Remedy(Plan(), Book(sown, 0), sown.AddDays(25 + 28)));
        Assert.Null(Remedy(Plan(), Book(sown, 0), sown.AddDays(25 + 29)));
        Assert.False(Remedy(Plan(place: null), Book(sown, 0), sown.AddDays(25))!.IsPlaceKnown);
    }

    /// <summary>Freezes at the usual time leave tender kinds their days of forage; freezes ten days away do not, whatever the
    /// printed window says.</summary>
    [Fact]
    public void Where_frost_comes_before_any_forage_a_tender_kind_is_not_named()
    {
        var sown = new DateOnly(2026, 7, 1);
        var on = sown.AddDays(25);
        PlotPlan Frosted(DateOnly early) => Plan("Georgia") with { Season = new() { Frost = FrostDates.FromQuantiles(Temperature.FromDegreesFahrenheit(32), early, early.AddDays(10), early.AddDays(20)) } };
        Assert.Equal("buckwheat", Remedy(Frosted(new(2026, 10, 15)), Book(sown, 0, "buckwheat"), on)!.InTime[0].Kind.Id);
        Assert.DoesNotContain(Remedy(Frosted(on.AddDays(10)), Book(sown, 0, "buckwheat"), on)!.InTime, d => d.Kind.Id == "buckwheat");
    }
}

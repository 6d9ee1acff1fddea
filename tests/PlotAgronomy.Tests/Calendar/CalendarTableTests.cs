using PlotAgronomy.Calendar;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Calendar;

/// <summary>The tables of the season hang together: their form, not their truth.</summary>
public class CalendarTableTests
{
    private static CsvTable Table(string name) => CsvTable.Embedded($"Calendar/Data/{name}.csv");

    [Fact]
    public void A_task_waits_for_tasks_that_stand_before_it()
    {
        var order = TaskRow.All.ToDictionary(r => r.Id, r => r.Order);
        Assert.All(TaskRow.All, row => Assert.All(row.WaitsFor, w => Assert.True(order[w] < row.Order, $"{row.Id} waits for {w}")));
        Assert.Equal(order.Values.Distinct().Count(), order.Count);
    }

    [Fact]
    public void No_interval_is_turned_around() => Assert.All(TaskRow.All, row => Assert.True(row.LowDays <= row.HighDays, row.Id));

    [Fact]
    public void Every_condition_is_asked_by_a_task() =>
        Assert.Empty(Enum.GetValues<SeasonCondition>().Except(TaskRow.All.SelectMany(r => r.Applies)));

    /// <summary>A dose at sowing goes on with the fertilizer; every other has its days.</summary>
    [Fact]
    public void Every_dose_of_nitrogen_after_sowing_has_its_days()
    {
        var doses = CsvTable.Embedded("Nutrients/Data/nitrogen-doses.csv").Rows.Where(r => r.Text("time") != "at-sowing").Select(r => r.Text("when")).Distinct().ToList();
        Assert.Empty(doses.Where(when => DoseTime.Of(when) is null));
        Assert.Empty(Table("dose-times").Rows.Select(r => r.Text("when")).Except(doses));
    }

    [Fact]
    public void Every_smother_crop_of_the_liming_room_has_its_days() =>
        Assert.Empty(CsvTable.Embedded("Liming/Data/smother-crops.csv").Rows.Select(r => r.Text("kind_id")).Except(Table("smother-crops").Rows.Select(r => r.Text("kind_id"))));

    [Fact]
    public void What_would_change_a_verdict_names_findings_that_exist()
    {
        var codes = Table("remedies").Rows.Select(r => r.Text("code")).ToList();
        Assert.Empty(codes.Except(FindingCatalog.Codes));
        Assert.Empty(FindingCatalog.Templates.Where(t => IsAReason(t.Code) && t.Severity > FindingSeverity.Note).Select(t => t.Code).Except(codes));
    }

    [Fact]
    public void Every_texture_that_the_printed_layers_leave_out_has_its_nearest() =>
        Assert.All(Enum.GetValues<SoilTexture>(), t => Assert.NotNull(PlotAgronomy.Weather.SurfaceLayer.Of(SurfaceTexture.Of(t).Texture)));

    private static bool IsAReason(string code) =>
        code is "weather-rain-unlikely" or "weather-rain-unsure" or "weather-rain-untold" or "weather-not-up" or "weather-sprouts-dry"
            or "weather-too-cold-to-sow" or "weather-too-late" or "weather-wash-off" or "weather-seed-eaters" or "calendar-outside-window"
            or "calendar-too-sour" or "calendar-too-wet" or "calendar-rain-that-day" or "calendar-lime-days-short";
}

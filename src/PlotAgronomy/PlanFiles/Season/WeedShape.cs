using PlotAgronomy.Calendar;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>How what grows on the plot is got rid of.</summary>
internal sealed class WeedShape : PlanShape<WeedControl>
{
    internal WeedShape()
        : base("weeds", "How what grows on the plot is got rid of before the seed.")
    {
        const string Own = "The owner's own way, in the owner's words.";
        var way = Required("way", Hyphened<WeedWay>(), "The way.", w => w.Way);
        var smother = Optional("smotherKind", Kind("buckwheat"), "Kind that smothers the weeds.", w => w.SmotherKind)
            .Answers(CalendarCodes.AskSmother);
        var sown = Optional("smotherSown", Date, "Day the smother crop was or will be sown.", w => w.SmotherSownOn);
        var label = Optional("labelDays", Number(0, 730), "Days before the seed that the herbicide's label asks for.", w =>
            w.LabelDays
        ).Answers(CalendarCodes.AskLabel);
        var words = Optional("words", Text("Solarize under clear sheet for six weeks"), Own, w => w.Words);

        ReadAs(at =>
            new()
            {
                Way = at.Get(way),
                SmotherKind = at.Find(smother),
                SmotherSownOn = at.Maybe(sown),
                LabelDays = at.Maybe(label),
                Words = at.Find(words),
            }
        );
    }
}

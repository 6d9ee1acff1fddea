using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>What to ask where a season cannot be laid out without it.</summary>
internal static class CalendarQuestions
{
    private static readonly EnumWords<WeedWay> Ways = EnumWords<WeedWay>.FromNames();

    internal static OpenQuestion<WeedWay> Weeds() =>
        QuestionCatalog.Ask<WeedWay>(CalendarCodes.AskWeeds, [.. Enum.GetValues<WeedWay>()], way => Ways[way]);

    internal static OpenQuestion<int> Label() =>
        QuestionCatalog.Ask<int>(CalendarCodes.AskLabel, [], days => days.ToString(CultureInfo.InvariantCulture));

    internal static OpenQuestion<int> Smother(CropKind kind) =>
        QuestionCatalog.Ask<int>(
            CalendarCodes.AskSmother,
            [],
            days => days.ToString(CultureInfo.InvariantCulture),
            ("kind", kind.ShortName)
        );

    internal static OpenQuestion<DateOnly> Frost() =>
        QuestionCatalog.Ask<DateOnly>(CalendarCodes.AskFrost, [], CalendarText.Date);

    internal static OpenQuestion<GeoPoint> Where() =>
        QuestionCatalog.Ask<GeoPoint>(CalendarCodes.AskWhere, [], point => point.ToString());

    internal static OpenQuestion<string> Forecast(string name) =>
        QuestionCatalog.Ask<string>(CalendarCodes.AskForecast, [], text => text, ("name", name));
}

using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>What to ask where the weather that was handed in does not tell.</summary>
internal static class WeatherQuestions
{
    internal static OpenQuestion<Length> Rain(string from, string to) =>
        QuestionCatalog.Ask<Length>(WeatherCodes.AskRain, [], rain => Amounts.Print(rain, "in", 2), ("from", from), ("to", to));

    internal static OpenQuestion<Temperature> Temperatures(string date) =>
        QuestionCatalog.Ask<Temperature>(WeatherCodes.AskTemperatures, [], CelsiusText.Of, ("date", date));

    internal static OpenQuestion<TimeSpan> Emergence(CropKind kind) =>
        QuestionCatalog.AskNumber(
            WeatherCodes.AskEmergence,
            TimeSpan.FromDays,
            days => Amounts.Print(days, "d", 0),
            ("kind", kind.ShortName)
        );

    internal static OpenQuestion<DateOnly> FirstFreeze(string threshold) =>
        QuestionCatalog.Ask<DateOnly>(WeatherCodes.AskFreeze, [], DateText.Of, ("threshold", threshold));

    internal static OpenQuestion<SoilTexture> Texture() =>
        QuestionCatalog.Ask<SoilTexture>(
            WeatherCodes.AskTexture,
            [SoilTexture.LoamySand, SoilTexture.SandyLoam, SoilTexture.Loam, SoilTexture.SiltLoam, SoilTexture.Clay],
            texture => SoilWords.Textures[texture]
        );
}

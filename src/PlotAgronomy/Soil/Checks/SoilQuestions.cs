using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>What to ask where the report or the plot leaves a fact open that a sum needs.</summary>
internal static class SoilQuestions
{
    private static readonly ImmutableArray<SoilTexture> TexturesByFeel =
    [
        SoilTexture.Sand,
        SoilTexture.SandyLoam,
        SoilTexture.Loam,
        SoilTexture.SiltLoam,
        SoilTexture.ClayLoam,
        SoilTexture.Clay,
    ];

    internal static OpenQuestion<WaterPh> WaterPh(SoilReport report) =>
        QuestionCatalog.AskNumber(
            SoilCodes.AskWaterPh,
            PlotAgronomy.WaterPh.FromValue,
            ph => ph.ToString(),
            ("laboratory", report.Laboratory)
        );

    internal static OpenQuestion<SoilTexture> Texture() =>
        QuestionCatalog.Ask(SoilCodes.AskTexture, TexturesByFeel, texture => SoilWords.Textures[texture]);

    internal static OpenQuestion<bool> FreeLime() =>
        QuestionCatalog.Ask(SoilCodes.AskFreeLime, [false, true], fizzes => fizzes ? "it fizzes" : "it does not fizz");

    /// <summary>The buffers of the acidity terms that were read.</summary>
    internal static OpenQuestion<SoilBuffer> Acidity(SoilReport report) =>
        QuestionCatalog.Ask(
            SoilCodes.AskAcidity,
            [.. AcidityTerm.All.SelectMany(t => t.Buffers).Distinct().Take(OpenQuestion.MostPlausible)],
            SoilWords.For,
            ("laboratory", report.Laboratory)
        );

    /// <summary>Days so many months before another day; none where that day is not known.</summary>
    internal static OpenQuestion<DateOnly> SampledDay(DateOnly? before) =>
        before is { } known
            ? QuestionCatalog.AskNumber(SoilCodes.AskSampledDay, months => known.AddMonths(-(int)months), InWords)
            : QuestionCatalog.Ask<DateOnly>(SoilCodes.AskSampledDay, [], InWords);

    /// <summary>What lime and nutrients rest on, where there is no report.</summary>
    internal static OpenQuestion<SoilReport> Report() =>
        QuestionCatalog.Ask<SoilReport>(SoilCodes.AskReport, [], report => report.ToString());

    /// <summary>The solutions that a reading may have been made with, those of the laboratory first.</summary>
    internal static OpenQuestion<Extractant> Extractant(SoilReport report, ImmutableArray<Extractant> plausible) =>
        QuestionCatalog.Ask(SoilCodes.AskExtractant, plausible, SoilWords.For, ("laboratory", report.Laboratory));

    private static string InWords(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

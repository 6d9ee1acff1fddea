using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Records;

/// <summary>What to ask where the book does not tell.</summary>
internal static class RecordQuestions
{
    internal static OpenQuestion<LimeRate> LimeNeed(string plot) =>
        QuestionCatalog.Ask<LimeRate>(RecordCodes.AskLimeNeed, [], rate => rate.ToString(), ("plot", plot));

    internal static OpenQuestion<LimeFigure> LimeStrength(LimingMaterial material, LimeBasis basis) =>
        QuestionCatalog.Ask<LimeFigure>(
            RecordCodes.AskLimeStrength,
            [],
            figure => figure.ToString(),
            ("material", material.Name),
            ("basis", basis.Name)
        );

    internal static OpenQuestion<WaterPh> PhAfter(string plot, string laboratory, DateOnly from) =>
        QuestionCatalog.Ask<WaterPh>(
            RecordCodes.AskPhAfter,
            [],
            ph => ph.ToString(),
            ("plot", plot),
            ("laboratory", laboratory),
            ("date", FieldWriter.Of(from))
        );

    internal static OpenQuestion<WaterPh> PhBefore(string plot, DateOnly limed) =>
        QuestionCatalog.Ask<WaterPh>(
            RecordCodes.AskPhBefore,
            [],
            ph => ph.ToString(),
            ("plot", plot),
            ("date", FieldWriter.Of(limed))
        );

    internal static OpenQuestion<SoilReport> Report(string plot) =>
        QuestionCatalog.Ask<SoilReport>(RecordCodes.AskReport, [], report => report.ToString(), ("plot", plot));

    internal static OpenQuestion<SeedCount> SeedCount(CropKind kind) =>
        QuestionCatalog.Ask<SeedCount>(RecordCodes.AskSeedCount, [], count => count.ToString(), ("kind", kind.ShortName));

    internal static OpenQuestion<CropKind> WhatWasSown(string plot, DateOnly counted) =>
        QuestionCatalog.Ask<CropKind>(
            RecordCodes.AskSown,
            [],
            kind => kind.ShortName,
            ("plot", plot),
            ("date", FieldWriter.Of(counted))
        );
}

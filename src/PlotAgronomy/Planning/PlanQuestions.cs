using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>What to ask where a plan itself leaves a fact open.</summary>
internal static class PlanQuestions
{
    internal static OpenQuestion<CropKind> Kinds() =>
        QuestionCatalog.Ask<CropKind>(PlanningCodes.AskKinds, [], kind => kind.ShortName);
}

using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>What to tape where a plot is known by its area alone.</summary>
internal static class LandQuestions
{
    internal static OpenQuestion<PlotArea> Outline() =>
        QuestionCatalog.Ask<PlotArea>(LandCodes.AskOutline, [], area => Amounts.Print(area.Area, "ac", 3));
}

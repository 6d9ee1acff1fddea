using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Every system against values worked out apart from this code; the source stands in each row.</summary>
public class SystemWorkedExamples
{
    private const string File = "Nutrients/worked-systems.csv";

    public static TheoryData<string> Needs => WorkedExamples.Ids(File, "need");

    [Theory, MemberData(nameof(Needs))]
    public void The_system_gives_the_published_need(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var need = SystemQuestions.Ask(row).For(SystemQuestions.NutrientOf(row));
        Assert.NotNull(need);
        WorkedExamples.AssertMatches(row, Quantity(need, row.Text("quantity")));
    }

    private static double Quantity(NutrientNeed need, string quantity) => quantity switch
    {
        "rate" => need.Rate.PoundsPerAcre,
        "rate kg/ha" => need.Rate.KilogramsPerHectare,
        "low" => need.PublishedLow.PoundsPerAcre,
        "high" => need.PublishedHigh.PoundsPerAcre,
        "printed" => need.AsPrinted!.Value.PoundsPerAcre,
        "build-up" => need.BuildUp!.Value.PoundsPerAcre,
        _ => throw new ArgumentException(quantity),
    };
}

using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Answers read as states, and a question with its plausible values.</summary>
public class AnswersDocExample
{
    [Fact]
    public void The_page_shows_what_the_code_does() =>
        DocExample.AssertCurrent("docs/plot-need.md", "tests/PlotAgronomy.Tests/Planning/AnswersDocExample.cs", Run, block: 1);

    private static void Run(TextWriter output)
    {
        string demo = File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"));
        // begin example
        var plan = PlanFile.Read(demo).Plan!;
        var answers = plan.Solve();
        if (answers.Lime.TryGet(out var lime))
        {
            output.WriteLine($"{lime.Rate.Value}: {lime.Order.Value.Bags} bags");
        }

        // The same plan with lime whose label tells no strength: how many bags rests on what the dealer says.
        var silent = LimingMaterial.FromAnalysis("field lime", LimingForm.GroundLimestone, ccePercent: 95);
        var asked = (plan with { LimeOffers = [Offer.InBags(silent, Mass.FromPounds(40), pricePerBag: 5.20m)] }).Solve();
        var order = asked.Lime.Value.Order;
        output.WriteLine($"lime {asked.Lime.State}, its order {order.State}");
        foreach (var question in order.Questions)
        {
            output.WriteLine($"{question.Whom}: {question.Text}");
            output.WriteLine($"plausible: {string.Join("; ", question.PlausibleTexts)}");
        }

        foreach (var assumed in order.Cases)
        {
            output.WriteLine($"at {assumed.Assumption}: {assumed.Value.Bags} bags");
        }

        output.WriteLine(string.Join(", ", asked.Questions.Select(q => q.Code)));
        // end example
    }
}

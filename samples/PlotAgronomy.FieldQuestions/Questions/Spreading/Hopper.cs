using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>Peas, wheat, crimson clover, turnip and bluestem lie in five bags. Which go into the hopper together, and in which
/// order is the work done?</summary>
internal static class Hopper
{
    private static readonly string[] Bags =
        ["Austrian winter pea", "winter wheat", "crimson clover", "forage-turnip", "big bluestem"];

    internal static void Answer(TextWriter output)
    {
        var order = SizeGrouping.Arrange([.. Bags.Select(name => PassKind.FromKind(KindCatalog.Standard.Find(name)))]);
        output.Tell(order);
        foreach (var (step, number) in order.Steps.Select((step, i) => (step, i + 1)))
        {
            output.WriteLine($"{number}. {Told(step)}.");
        }
    }

    private static string Told(SeedingStep step) =>
        step.Action switch
        {
            SeedingAction.Cover => "Drag lightly, so that what lies there is covered",
            SeedingAction.Press => "Roll, so that the rest is pressed in and not buried",
            _ => $"Spread {string.Join(" with ", step.Group!.Kinds.Select(k => k.Name))}",
        };
}

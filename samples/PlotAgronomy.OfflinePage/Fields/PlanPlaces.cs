using PlotAgronomy.OfflinePage.Plan;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>Where the library's paths lie on the page.</summary>
internal static class PlanPlaces
{
    /// <summary>Whether the declarations know a field, part or list at a path; a name that nobody knows has no field to go
    /// to.</summary>
    internal static bool IsField(string path)
    {
        PartDeclaration? part = PlanDeclarations.Find(PlanDeclarations.WholePlan);
        var steps = PlanPath.Of(path).Steps;
        foreach (var step in steps.Where(s => s.Index is null))
        {
            if (part?.Fields.FirstOrDefault(f => f.Name == step.Name) is not { } field)
            {
                return false;
            }

            part = field.PartName is { } below ? PlanDeclarations.Find(below) : null;
        }

        return !steps.IsEmpty;
    }
}

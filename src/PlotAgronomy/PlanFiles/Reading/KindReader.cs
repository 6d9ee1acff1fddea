namespace PlotAgronomy.PlanFiles;

/// <summary>Finds the kind a field of a plan file names; never guesses between two.</summary>
internal static class KindReader
{
    /// <summary>The kind, or null when the field is absent or names none, which is reported.</summary>
    internal static CropKind? Read(PlanObject part, string field)
    {
        if (part.Text(field) is not { } name)
        {
            return null;
        }

        if (KindCatalog.Standard.TryFind(name, out var kind, out string problem))
        {
            return kind;
        }

        part.Report(field, problem);
        return null;
    }
}

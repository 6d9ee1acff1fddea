namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>A part of the plan and its fields, in the order of the plan file's page.</summary>
public sealed record PartDeclaration(string Name, string Meaning, IReadOnlyList<FieldDeclaration> Fields)
{
    internal FieldDeclaration Field(string name) => Fields.First(f => f.Name == name);
}

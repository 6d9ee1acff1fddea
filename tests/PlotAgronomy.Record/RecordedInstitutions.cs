namespace PlotAgronomy.Record;

/// <summary>Institutions as the lime tables spelled them when the record was made.</summary>
internal static class RecordedInstitutions
{
    private static readonly Dictionary<string, string> Spellings = new()
    {
        ["alabama"] = "Adams-Evans",
        ["ohio"] = "Ohio 1961",
        ["practice"] = "garden practice",
        ["tri-state"] = "Ohio/Indiana/Michigan 1995",
    };

    internal static string Spelled(Institution institution) =>
        Spellings.GetValueOrDefault(institution.Id, institution.Name);
}

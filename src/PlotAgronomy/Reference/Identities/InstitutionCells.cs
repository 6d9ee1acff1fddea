namespace PlotAgronomy.Reference;

/// <summary>Institutions in the cells of tables.</summary>
internal static class InstitutionCells
{
    /// <summary>The institution of an id; tables name it by no other name.</summary>
    internal static Institution Institution(this CsvRow row, string column = "institution_id")
    {
        string id = row.Text(column);
        if (!PlotAgronomy.Institution.TryFind(id, out var institution, out string problem))
        {
            throw row.Problem(column, problem);
        }

        return institution.Id == id
            ? institution
            : throw row.Problem(column, $"expected the id '{institution.Id}', found '{id}'");
    }
}

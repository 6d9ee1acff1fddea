using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>How an institution credits lime of earlier years; most print no such rule.</summary>
internal sealed class EarlierLimeRule
{
    private static readonly Lazy<IReadOnlyDictionary<Institution, EarlierLimeRule>> ByInstitution = new Table<EarlierLimeRule>(
        "Liming/Data/earlier-lime.csv",
        r => new EarlierLimeRule(r)
    ).By(r => r.institution);

    private readonly Institution institution;
    private readonly double onMineral;
    private readonly double onOrganic;

    private EarlierLimeRule(CsvRow row)
    {
        institution = row.Institution();
        FormulaId = row.Text("formula_id");
        onMineral = row.Number("loss_on_mineral_per_month");
        onOrganic = row.Number("loss_on_organic_per_month");
        _ = row.Origin();
    }

    /// <summary>Gets the id of the formula.</summary>
    internal string FormulaId { get; }

    /// <summary>The rule of an institution; null when it prints none.</summary>
    internal static EarlierLimeRule? FindForInstitution(Institution institution) =>
        ByInstitution.Value.GetValueOrDefault(institution);

    /// <summary>The part that is gone each month.</summary>
    internal double LossAMonthOn(SoilClass soilClass) => soilClass == SoilClass.Mineral ? onMineral : onOrganic;
}

using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>What would take a reason away, by its code.</summary>
internal static class Remedies
{
    private static readonly Lazy<IReadOnlyDictionary<string, string>> ByCode = Table.Keyed(
        "Calendar/Data/remedies.csv",
        row => row.Text("code"),
        row =>
        {
            _ = row.Origin();
            return row.Text("text");
        }
    );

    internal static string? Of(string code) => ByCode.Value.GetValueOrDefault(code);
}

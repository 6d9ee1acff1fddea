namespace PlotAgronomy.Records;

/// <summary>Words and marks of fields that are written and read.</summary>
internal static class FieldText
{
    internal const char ListMark = ';';
    internal const string Yes = "yes";
    internal const string No = "no";

    internal static string YesOrNo(bool value) => value ? Yes : No;
}

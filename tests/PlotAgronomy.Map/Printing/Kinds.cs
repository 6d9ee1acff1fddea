using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Printing;

/// <summary>How kinds of members are named in print.</summary>
internal static class Kinds
{
    internal static string Word(MemberKind kind) => kind switch
    {
        MemberKind.Type => "type",
        MemberKind.Constructor => "constructor",
        MemberKind.Method => "method",
        MemberKind.Operator => "operator",
        MemberKind.Property => "property",
        MemberKind.Indexer => "indexer",
        MemberKind.EnumValue => "enum value",
        MemberKind.Field => "field",
        _ => "event",
    };
}

namespace PlotAgronomy.Map.Model;

internal enum MemberKind
{
    Type,
    Constructor,
    Method,
    Operator,
    Property,
    Indexer,
    Field,
    EnumValue,
    Event,
}

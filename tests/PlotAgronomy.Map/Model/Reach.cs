namespace PlotAgronomy.Map.Model;

/// <summary>Who can see a member: its own type, its assembly, or everybody.</summary>
internal enum Reach
{
    Private,
    Internal,
    Public,
}

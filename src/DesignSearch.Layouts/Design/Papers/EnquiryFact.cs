namespace DesignSearch.Layouts.Design.Papers;

/// <summary>One line of an enquiry for licensed work: what the person who makes an offer must know.</summary>
/// <param name="Trade">Who is asked.</param>
/// <param name="What">What it is about.</param>
/// <param name="Value">What is planned, wanted or asked.</param>
public sealed record EnquiryFact(Trade Trade, string What, string Value);

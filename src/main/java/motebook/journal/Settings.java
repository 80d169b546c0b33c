package motebook.journal;

public record Settings(
    String person, String place, String limitSet, double totalConversion, int gapMinutes) {}
